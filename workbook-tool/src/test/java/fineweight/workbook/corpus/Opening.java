package fineweight.workbook.corpus;

import fineweight.workbook.Workbooks;

/** The way into the program that the tests take. */
public final class Opening {
  /** The engine for .xlsx and .xlsm alone. */
  public static final Workbooks XLSX =
      file -> {
        throw new UnsupportedOperationException();
      };

  /** Any kind of file, told by its content. */
  public static final Workbooks ANY = XLSX;

  private Opening() {}
}
