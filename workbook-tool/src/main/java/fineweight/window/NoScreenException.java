package fineweight.window;

/** There is no screen to open a window on. */
public final class NoScreenException extends Exception {
  private static final long serialVersionUID = 1L;

  NoScreenException() {
    super(
        "There is no screen here to open a window on; use fineweight FILE to look into a workbook and"
            + " fineweight refresh FILE to fill it.");
  }
}
