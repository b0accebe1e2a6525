package fineweight.sheet.function;

/** An argument that a function cannot use; its message becomes the cell's text. */
public final class UnusableArgument extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /**
   * @param parameter the parameter's name
   * @param trouble what is wrong and what is expected
   */
  public UnusableArgument(String parameter, String trouble) {
    super(parameter + ": " + trouble);
  }
}
