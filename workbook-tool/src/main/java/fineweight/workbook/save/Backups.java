package fineweight.workbook.save;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;

/** The backups that stand beside a file: at most five, the highest number the newest. */
public final class Backups {
  private final Disk disk;

  Backups(Disk disk) {
    this.disk = disk;
  }

  public static Backups onDisk() {
    return new Backups(new RealDisk());
  }

  /**
   * A former state of a file.
   *
   * @param number higher is newer
   * @param modified when that state was last written
   * @param size in bytes
   */
  public record Backup(int number, Path path, FileTime modified, long size) {}

  /** Whether a file's name says that it is a backup of ours, and not somebody's workbook. */
  public static boolean isBackup(Path file) {
    return BackupFiles.isName(file.getFileName().toString());
  }

  /**
   * Newest first; empty if there are none.
   *
   * @param file the file itself, which may be absent
   */
  public List<Backup> list(Path file) throws WorkbookRefusal {
    try {
      List<Backup> backups = new ArrayList<>();
      for (BackupFiles.Numbered one : new BackupFiles(real(file), disk).list()) {
        backups.add(
            new Backup(
                one.number(),
                one.path(),
                Files.getLastModifiedTime(one.path()),
                Files.size(one.path())));
      }
      return List.copyOf(backups);
    } catch (IOException e) {
      throw DiskTrouble.refusal(file, e);
    }
  }

  /**
   * Puts a former state in the place of the file. The present state becomes a backup first, so that
   * this can be taken back too.
   *
   * @param file the file itself, which may be absent
   * @param number as {@link #list} gives it
   * @return where the present state is kept, or the file itself if there was none
   * @throws WorkbookRefusal if there is no such backup, or the file cannot be replaced
   */
  public Path restore(Path file, int number) throws WorkbookRefusal {
    Backup backup =
        list(file).stream()
            .filter(one -> one.number() == number)
            .findFirst()
            .orElseThrow(() -> absent(file, number));
    SafeSave save = new SafeSave(disk);
    try {
      FileFingerprint meant = FileFingerprint.of(backup.path());
      FileReplacement.Writer writer = out -> Files.copy(backup.path(), out);
      FileReplacement.Check check = written -> requireSame(written, meant);
      if (Files.exists(file)) {
        return save.replace(file, FileFingerprint.of(file), writer, check);
      }
      save.create(file, writer, check);
      return file;
    } catch (IOException e) {
      throw DiskTrouble.refusal(file, e);
    }
  }

  private static Path real(Path file) throws IOException {
    return Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
  }

  private static void requireSame(Path written, FileFingerprint meant) throws IOException {
    if (!FileFingerprint.of(written).sameContent(meant)) {
      throw new IOException("the copy differs from the backup");
    }
  }

  private static WorkbookRefusal absent(Path file, int number) {
    return new WorkbookRefusal(
        Kind.FILE,
        "%s has no backup number %d: list its backups and choose one of them."
            .formatted(file.getFileName(), number));
  }
}
