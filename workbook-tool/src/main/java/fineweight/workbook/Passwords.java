package fineweight.workbook;

import java.nio.file.Path;
import java.util.Optional;

/** Tells the password of an encrypted file, or asks somebody for it. */
@FunctionalInterface
public interface Passwords {
  /** Nobody knows one. */
  Passwords NONE = file -> Optional.empty();

  /**
   * @return empty if nobody tells one
   * @throws WorkbookRefusal if the place where it is kept cannot be read
   */
  Optional<String> of(Path file) throws WorkbookRefusal;

  /** What to say of an encrypted file that is not opened, or only read. */
  static String missing(Path file) {
    return file.getFileName()
        + " is encrypted with a password: open it in your office, save a copy without a password and"
        + " run again on the copy; refresh --dry-run shows with the password what would change.";
  }

  /** A file that does not open. */
  static WorkbookRefusal wrong(Path file, Exception cause) {
    return new WorkbookRefusal(
        WorkbookRefusal.Kind.PROTECTED,
        "%s does not open with that password: check capital letters and blanks, and that it is the password to open the file."
            .formatted(file.getFileName()),
        cause);
  }
}
