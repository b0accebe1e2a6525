package fineweight.workbook.save;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What an error of the file system means to the owner of the file. */
enum DiskTrouble {
  FULL(
      Kind.FILE,
      "was left as it was, because the disk is full: make room and run again.",
      IOException.class,
      List.of("no space left", "not enough space", "quota exceeded", "file too large")),
  IN_USE(
      Kind.IN_USE,
      "is open in another program: close it there and run again.",
      IOException.class,
      List.of("being used by another process")),
  VANISHED(
      Kind.FILE,
      "or its folder vanished while it was being saved: look where it is now and run again.",
      NoSuchFileException.class,
      List.of("")),
  FORBIDDEN(
      Kind.FILE,
      "was left as it was, because nothing may be written in its folder: ask for the right to write"
          + " there, or work on a copy elsewhere.",
      AccessDeniedException.class,
      List.of("")),
  READ_ONLY(Kind.FILE, FORBIDDEN.predicate, IOException.class, List.of("read-only file system")),
  OTHER(
      Kind.FILE,
      "was left as it was, because it could not be saved (%s): check the disk and run again.",
      IOException.class,
      List.of(""));

  private final Kind kind;
  private final String predicate;
  private final Class<? extends IOException> type;
  private final List<String> reasons;

  /**
   * @param reasons parts of what the system says, in small letters
   */
  DiskTrouble(
      Kind kind, String predicate, Class<? extends IOException> type, List<String> reasons) {
    this.kind = kind;
    this.predicate = predicate;
    this.type = type;
    this.reasons = reasons;
  }

  static WorkbookRefusal refusal(Path file, IOException e) {
    String reason = reason(e);
    DiskTrouble trouble =
        Arrays.stream(values())
            .filter(one -> one.fits(e, reason.toLowerCase(Locale.ROOT)))
            .findFirst()
            .orElse(OTHER);
    String sentence = file.getFileName() + " " + trouble.predicate.replace("%s", reason);
    return new WorkbookRefusal(trouble.kind, sentence, e);
  }

  private boolean fits(IOException e, String smallReason) {
    return type.isInstance(e) && reasons.stream().anyMatch(smallReason::contains);
  }

  private static String reason(IOException e) {
    String reason =
        e instanceof FileSystemException onFile && onFile.getReason() != null
            ? onFile.getReason()
            : e.getMessage();
    return reason == null || reason.isBlank() ? "no reason given" : reason;
  }
}
