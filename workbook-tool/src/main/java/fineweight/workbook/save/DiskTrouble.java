package fineweight.workbook.save;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** What an error of the file system means to the owner of the file. */
final class DiskTrouble {
  private static final List<String> FULL =
      List.of("no space left", "not enough space", "quota exceeded", "file too large");

  private DiskTrouble() {}

  static WorkbookRefusal refusal(Path file, IOException e) {
    String name = file.getFileName().toString();
    String reason = reason(e);
    String small = reason.toLowerCase(Locale.ROOT);
    if (FULL.stream().anyMatch(small::contains)) {
      return refusal(
          Kind.FILE,
          "%s was left as it was, because the disk is full: make room and run again.",
          e,
          name);
    }
    if (small.contains("being used by another process")) {
      return refusal(
          Kind.IN_USE, "%s is open in another program: close it there and run again.", e, name);
    }
    if (e instanceof NoSuchFileException) {
      return refusal(
          Kind.FILE,
          "%s or its folder vanished while it was being saved: look where it is now and run again.",
          e,
          name);
    }
    if (e instanceof AccessDeniedException || small.contains("read-only file system")) {
      return refusal(
          Kind.FILE,
          "%s was left as it was, because nothing may be written in its folder: ask for the right to"
              + " write there, or work on a copy elsewhere.",
          e,
          name);
    }
    return refusal(
        Kind.FILE,
        "%s was left as it was, because it could not be saved (%s): check the disk and run again.",
        e,
        name,
        reason);
  }

  private static WorkbookRefusal refusal(
      Kind kind, String sentence, IOException cause, Object... words) {
    return new WorkbookRefusal(kind, sentence.formatted(words), cause);
  }

  private static String reason(IOException e) {
    String reason =
        e instanceof FileSystemException onFile && onFile.getReason() != null
            ? onFile.getReason()
            : e.getMessage();
    return reason == null || reason.isBlank() ? "no reason given" : reason;
  }
}
