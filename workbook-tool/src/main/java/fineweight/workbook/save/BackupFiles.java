package fineweight.workbook.save;

import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The numbered backups of one file, beside it: {@code coins.fineweight-12.xlsx} for {@code
 * coins.xlsx}. The highest number is the newest.
 */
final class BackupFiles {
  static final int KEPT = 5;
  private static final Pattern ANY_NAME = Pattern.compile(".*\\.fineweight-\\d{1,9}(\\.[^.]*)?");

  private final Path file;
  private final Disk disk;

  BackupFiles(Path file, Disk disk) {
    this.file = file;
    this.disk = disk;
  }

  /**
   * A backup.
   *
   * @param isNew false if an earlier one with the same content serves
   */
  record Kept(Path path, boolean isNew) {}

  /** A backup by its number. */
  record Numbered(int number, Path path) {}

  static boolean isName(String name) {
    return ANY_NAME.matcher(name).matches();
  }

  /** Newest first. */
  List<Numbered> list() throws IOException {
    String name = file.getFileName().toString();
    Pattern pattern =
        Pattern.compile(
            Pattern.quote(stem(name)) + "\\.fineweight-(\\d{1,9})" + Pattern.quote(ending(name)));
    List<Numbered> backups = new ArrayList<>();
    for (Path entry : disk.list(file.getParent())) {
      Matcher matcher = pattern.matcher(entry.getFileName().toString());
      if (matcher.matches()) {
        backups.add(new Numbered(Integer.parseInt(matcher.group(1)), entry));
      }
    }
    backups.sort(Comparator.comparingInt(Numbered::number).reversed());
    return backups;
  }

  /**
   * Keeps the file as it is now.
   *
   * @throws WorkbookRefusal if it is no longer as it was read
   */
  Kept keep(FileFingerprint asRead) throws IOException, WorkbookRefusal {
    List<Numbered> present = list();
    try (Part part = Part.in(file.getParent(), disk)) {
      FileTime modified = Files.getLastModifiedTime(file);
      if (!copy(part.path(), modified).sameContent(asRead)) {
        throw SafeSave.changed(file);
      }
      if (!present.isEmpty() && isCopy(present.get(0).path(), asRead)) {
        // A save that was cut off after its backup: one copy is enough.
        return new Kept(present.get(0).path(), false);
      }
      Path backup = named(present.isEmpty() ? 1 : present.get(0).number() + 1);
      disk.copyPermissions(file, part.path());
      Files.setLastModifiedTime(part.path(), modified);
      disk.flush(part.path());
      disk.rename(part.path(), backup);
      return new Kept(backup, true);
    }
  }

  /** Takes a backup back whose save did not come about. */
  void withdraw(Kept kept) {
    if (!kept.isNew()) {
      return;
    }
    try {
      disk.delete(kept.path());
    } catch (IOException e) {
      // It is a true copy of the file, and the next save takes it for its own.
      return;
    }
  }

  void dropOldest() throws IOException {
    List<Numbered> present = list();
    for (Numbered old : present.subList(Math.min(KEPT, present.size()), present.size())) {
      disk.delete(old.path());
    }
  }

  private boolean isCopy(Path backup, FileFingerprint asRead) throws IOException {
    try (InputStream content = disk.read(backup)) {
      return FileFingerprint.copying(content, OutputStream.nullOutputStream(), asRead.modified())
          .sameContent(asRead);
    }
  }

  private FileFingerprint copy(Path to, FileTime modified) throws IOException {
    try (InputStream from = disk.read(file);
        OutputStream out = disk.write(to)) {
      return FileFingerprint.copying(from, out, modified);
    }
  }

  private Path named(int number) {
    String name = file.getFileName().toString();
    return file.resolveSibling(stem(name) + ".fineweight-" + number + ending(name));
  }

  private static String stem(String name) {
    return name.substring(0, name.length() - ending(name).length());
  }

  /** With its dot, so that a double click opens the backup as it opens the file. */
  private static String ending(String name) {
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(dot) : "";
  }
}
