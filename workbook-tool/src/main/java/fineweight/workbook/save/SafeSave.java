package fineweight.workbook.save;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.DosFileAttributes;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.Set;

/**
 * Replaces a file by way of a complete copy beside it: written, flushed to the disk, checked, the
 * former content kept as a backup, renamed over the file in one step. A process killed at any
 * moment leaves the old or the new file, whole.
 */
public final class SafeSave implements FileReplacement {
  private static final Set<PosixFilePermission> WRITE =
      EnumSet.of(
          PosixFilePermission.OWNER_WRITE,
          PosixFilePermission.GROUP_WRITE,
          PosixFilePermission.OTHERS_WRITE);

  private final Disk disk;

  SafeSave(Disk disk) {
    this.disk = disk;
  }

  public static SafeSave onDisk() {
    return new SafeSave(new RealDisk());
  }

  @Override
  public Path replace(Path target, FileFingerprint asRead, Writer writer, Check check)
      throws WorkbookRefusal {
    Path file = realFile(target);
    refuseReadOnly(file);
    refuseIfInUse(target, file);
    try {
      refuseIfChanged(file, asRead);
      Part.sweep(file.getParent(), disk);
      try (Part part = Part.in(file.getParent(), disk)) {
        fill(part.path(), file, writer);
        check.check(part.path());
        refuseIfInUse(target, file);
        return exchange(part.path(), file, asRead);
      }
    } catch (IOException e) {
      throw DiskTrouble.refusal(file, e);
    }
  }

  /** Puts a content where no file is. */
  void create(Path file, Writer writer, Check check) throws WorkbookRefusal {
    Path absolute = file.toAbsolutePath();
    try {
      Part.sweep(absolute.getParent(), disk);
      try (Part part = Part.in(absolute.getParent(), disk)) {
        write(part.path(), writer);
        check.check(part.path());
        disk.rename(part.path(), absolute);
      }
    } catch (IOException e) {
      throw DiskTrouble.refusal(file, e);
    }
  }

  private void fill(Path part, Path file, Writer writer) throws IOException, WorkbookRefusal {
    write(part, writer);
    disk.copyPermissions(file, part);
  }

  private void write(Path part, Writer writer) throws IOException, WorkbookRefusal {
    try (OutputStream out = new BufferedOutputStream(disk.write(part), 1 << 16)) {
      writer.writeTo(out);
    }
    disk.flush(part);
  }

  private Path exchange(Path part, Path file, FileFingerprint asRead)
      throws IOException, WorkbookRefusal {
    BackupFiles backups = new BackupFiles(file, disk);
    BackupFiles.Kept kept = backups.keep(asRead);
    boolean replaced = false;
    try {
      disk.rename(part, file);
      replaced = true;
    } finally {
      if (!replaced) {
        backups.withdraw(kept);
      }
    }
    settle(file, backups);
    return kept.path();
  }

  /** What follows the exchange: a failure here no longer changes the outcome. */
  private void settle(Path file, BackupFiles backups) {
    try {
      disk.flush(file.getParent());
      backups.dropOldest();
    } catch (IOException e) {
      // The new file is in place; a backup too many goes with the next save.
      return;
    }
  }

  private static Path realFile(Path target) throws WorkbookRefusal {
    try {
      Path file = target.toRealPath();
      if (!Files.isDirectory(file)) {
        return file;
      }
    } catch (NoSuchFileException | FileSystemLoopException e) {
      throw new WorkbookRefusal(
          Kind.FILE, "%s is not there: check the name and the folder.".formatted(target), e);
    } catch (IOException e) {
      throw DiskTrouble.refusal(target, e);
    }
    throw new WorkbookRefusal(Kind.FILE, "%s is a folder: name the file in it.".formatted(target));
  }

  private static void refuseReadOnly(Path file) throws WorkbookRefusal {
    if (isReadOnly(file)) {
      throw new WorkbookRefusal(
          Kind.FILE,
          "%s is marked read-only: take the mark off in its properties, or work on a copy."
              .formatted(file.getFileName()));
    }
  }

  /** An administrator may write everywhere, and still should not where the owner forbade it. */
  private static boolean isReadOnly(Path file) throws WorkbookRefusal {
    try {
      var views = Files.getFileStore(file);
      if (views.supportsFileAttributeView("posix")) {
        return Files.getPosixFilePermissions(file).stream().noneMatch(WRITE::contains)
            || !Files.isWritable(file);
      }
      return views.supportsFileAttributeView("dos")
          && Files.readAttributes(file, DosFileAttributes.class).isReadOnly();
    } catch (IOException e) {
      throw DiskTrouble.refusal(file, e);
    }
  }

  /** A program marks the name by which it opened the file: the link's or the file's own. */
  private static void refuseIfInUse(Path target, Path file) throws WorkbookRefusal {
    OwnerFiles.refuseIfPresent(target.toAbsolutePath());
    OwnerFiles.refuseIfPresent(file);
  }

  private void refuseIfChanged(Path file, FileFingerprint asRead)
      throws IOException, WorkbookRefusal {
    FileTime modified = Files.getLastModifiedTime(file);
    if (Files.size(file) == asRead.size() && modified.equals(asRead.modified())) {
      return;
    }
    try (InputStream content = disk.read(file)) {
      FileFingerprint now =
          FileFingerprint.copying(content, OutputStream.nullOutputStream(), modified);
      if (!now.sameContent(asRead)) {
        throw changed(file);
      }
    }
  }

  static WorkbookRefusal changed(Path file) {
    return new WorkbookRefusal(
        Kind.IN_USE,
        ("%s was changed by another program since it was read, and is left as it is now: run"
                + " again.")
            .formatted(file.getFileName()));
  }
}
