package fineweight.workbook.save;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The machine's own file system. */
final class RealDisk implements Disk {
  @Override
  public InputStream read(Path file) throws IOException {
    return Files.newInputStream(file);
  }

  @Override
  public OutputStream write(Path file) throws IOException {
    FileAttribute<?>[] ownersOnly =
        Files.getFileStore(file.getParent()).supportsFileAttributeView("posix")
            ? new FileAttribute<?>[] {
              PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
            }
            : new FileAttribute<?>[0];
    return Channels.newOutputStream(
        FileChannel.open(
            file, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), ownersOnly));
  }

  @Override
  public void flush(Path fileOrFolder) throws IOException {
    boolean folder = Files.isDirectory(fileOrFolder);
    StandardOpenOption access = folder ? StandardOpenOption.READ : StandardOpenOption.WRITE;
    try (FileChannel channel = FileChannel.open(fileOrFolder, access)) {
      channel.force(true);
    } catch (AccessDeniedException e) {
      // Windows opens no folder as a file, and needs no flush of its names.
      if (!folder) {
        throw e;
      }
    }
  }

  @Override
  public void copyPermissions(Path from, Path to) throws IOException {
    PosixFileAttributeView target = Files.getFileAttributeView(to, PosixFileAttributeView.class);
    if (target == null) {
      return;
    }
    PosixFileAttributes source = Files.readAttributes(from, PosixFileAttributes.class);
    if (!target.readAttributes().group().equals(source.group())) {
      try {
        target.setGroup(source.group());
      } catch (FileSystemException e) {
        // Not a member of that group: the file then belongs to the writer's own, as with any copy.
        target.setPermissions(source.permissions());
        return;
      }
    }
    target.setPermissions(source.permissions());
  }

  @Override
  public void rename(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  @Override
  public void delete(Path file) throws IOException {
    Files.deleteIfExists(file);
  }

  @Override
  public List<Path> list(Path folder) throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.toList();
    }
  }
}
