package fineweight.workbook;

/** The kinds of file, told by content and not by name. */
public enum FileFormat {
  XLSX("Excel workbook (.xlsx)"),
  XLSM("Excel workbook with macros (.xlsm)"),
  XLS("Excel 97-2003 workbook (.xls)"),
  CSV("text table (.csv)");

  private final String words;

  FileFormat(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
