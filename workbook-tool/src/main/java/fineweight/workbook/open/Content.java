package fineweight.workbook.open;

import fineweight.workbook.WorkbookRefusal.Kind;

/** What a file turns out to be. */
enum Content {
  PACKAGE,
  XLS,
  TEXT,
  ENCRYPTED,
  OLD_XLS(
      Kind.UNSUPPORTED,
      "was written by a version before Excel 97: open it in your office, save it as .xlsx and run"
          + " again"),
  BINARY_PACKAGE(
      Kind.UNSUPPORTED,
      "is a binary workbook (.xlsb): open it in your office, save it as .xlsx and run again"),
  OPEN_DOCUMENT(
      Kind.UNSUPPORTED,
      "is an OpenDocument sheet (.ods): open it in your office, save it as .xlsx and run again"),
  OTHER_DOCUMENT(
      Kind.UNSUPPORTED, "is an office document, but not a workbook: choose the workbook"),
  WEB_PAGE(
      Kind.UNSUPPORTED,
      "is a web page and not a workbook, whatever its name says: open it in your office, save it as"
          + " .xlsx and run again"),
  XML(
      Kind.UNSUPPORTED,
      "is an XML file and not a workbook, whatever its name says: open it in your office, save it"
          + " as .xlsx and run again"),
  ARCHIVE(Kind.UNSUPPORTED, "is a packed archive: unpack it and choose the workbook in it"),
  PDF(Kind.DAMAGED, "is a PDF and holds no table that can be filled: choose the workbook"),
  PICTURE(Kind.DAMAGED, "is a picture: choose the workbook"),
  EMPTY(Kind.DAMAGED, "is empty (0 bytes): take a backup of it"),
  CUT_OFF(
      Kind.DAMAGED, "is cut off or damaged: fetch it again from where it came, or take a backup"),
  UNKNOWN(Kind.DAMAGED, "is neither a workbook nor a text table: choose the workbook");

  private final Kind refusal;
  private final String predicate;

  /** One that can be opened. */
  Content() {
    this(null, "");
  }

  Content(Kind refusal, String predicate) {
    this.refusal = refusal;
    this.predicate = predicate;
  }

  /** Null if the file can be opened. */
  Kind refusal() {
    return refusal;
  }

  /** What to say of the file, after its name. */
  String predicate() {
    return predicate;
  }
}
