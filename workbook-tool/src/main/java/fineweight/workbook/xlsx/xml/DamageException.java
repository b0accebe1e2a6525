package fineweight.workbook.xlsx.xml;

/**
 * A package that is broken or made to do harm. Unchecked, because it may come up in the depth of
 * any reading; the workbook's boundary turns it into a refusal.
 */
public final class DamageException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * @param what a clause for people without the file's name, such as {@code row 5 of sheet "A"
   *     occurs twice}
   */
  public DamageException(String what) {
    super(what);
  }

  public DamageException(String what, Throwable cause) {
    super(what, cause);
  }
}
