package fineweight.workbook;

/**
 * A file that cannot be read or may not be changed, said in one plain sentence with file, place and
 * remedy. The file is as it was.
 */
public final class WorkbookRefusal extends Exception {
  private static final long serialVersionUID = 1L;

  /** What kind of trouble it is; each has its own exit code. */
  public enum Kind {
    /** Absent, a folder, not readable, not writable, disk full. */
    FILE,
    /** Another program holds the file, or it changed while we worked. */
    IN_USE,
    /** Not a workbook, a damaged one, or one made to do harm. */
    DAMAGED,
    /** A workbook of a kind that we do not write. */
    UNSUPPORTED,
    /** Protected, signed or encrypted by its owner. */
    PROTECTED,
    /** Our columns find no place, or a target cell holds something of the owner's. */
    NO_ROOM
  }

  private final Kind kind;

  public WorkbookRefusal(Kind kind, String sentence) {
    super(sentence);
    this.kind = kind;
  }

  public WorkbookRefusal(Kind kind, String sentence, Throwable cause) {
    super(sentence, cause);
    this.kind = kind;
  }

  public Kind kind() {
    return kind;
  }
}
