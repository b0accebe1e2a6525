package fineweight.standard;

/**
 * A row of a catalogue file that cannot be used. Holds the place, so that whoever shows it can
 * point there.
 */
public final class StandardFileException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String file;
  private final long line;
  private final String column;
  private final String reason;

  StandardFileException(String file, long line, String column, String reason) {
    super(file + ", line " + line + ", column " + column + ": " + reason);
    this.file = file;
    this.line = line;
    this.column = column;
    this.reason = reason;
  }

  public String file() {
    return file;
  }

  /** The line in the file, from 1, the header included. */
  public long line() {
    return line;
  }

  /** The header of the column at fault. */
  public String column() {
    return column;
  }

  public String reason() {
    return reason;
  }
}
