package fineweight.typeset;

/** The list of a set that cannot be used; names the file, the line and the reason. */
public final class TypeSetFileException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String file;
  private final long line;

  TypeSetFileException(String file, long line, String reason) {
    super(file + (line > 0 ? ", line " + line : "") + ": " + reason);
    this.file = file;
    this.line = line;
  }

  public String file() {
    return file;
  }

  /** The line in the file, from 1, the header included; 0 where the whole file is at fault. */
  public long line() {
    return line;
  }
}
