package fineweight.workbook.corpus;

import fineweight.workbook.Workbooks;
import fineweight.workbook.open.AnyWorkbook;
import fineweight.workbook.save.SafeSave;
import fineweight.workbook.xlsx.XlsxWorkbook;

/** The way into the program that the tests take. */
public final class Opening {
  /** The engine for .xlsx and .xlsm alone. */
  public static final Workbooks XLSX = file -> XlsxWorkbook.open(file, SafeSave.onDisk());

  /** Any kind of file, told by its content. */
  public static final Workbooks ANY = AnyWorkbook.of(XLSX::open, SafeSave.onDisk());

  private Opening() {}
}
