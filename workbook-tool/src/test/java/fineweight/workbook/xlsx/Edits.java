package fineweight.workbook.xlsx;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.NamedCell;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.Workbook.SaveResult;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookEdit.ColumnPlace;
import fineweight.workbook.WorkbookEdit.Removal;
import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Short ways to make edits in tests. */
final class Edits {
  private Edits() {}

  /** A column with a header in row 0 and these contents from row 1 down. */
  static ColumnEdit column(int column, String header, CellContent... cells) {
    return column(column, header, CellLook.GENERAL, 0, cells);
  }

  static ColumnEdit column(
      int column, String header, CellLook look, double width, CellContent... cells) {
    return new ColumnEdit(
        column, header, look, width, row -> row <= cells.length ? cells[row - 1] : null);
  }

  static CellContent number(String value) {
    return new CellContent.Number(new BigDecimal(value));
  }

  static CellContent text(String value) {
    return new CellContent.Text(value);
  }

  static WorkbookEdit fill(String sheet, int lastRow, ColumnEdit... columns) {
    return new WorkbookEdit(
        List.of(new SheetEdit(sheet, 0, 1, lastRow, List.of(columns))),
        List.of(),
        List.of(),
        Removal.NOTHING);
  }

  static WorkbookEdit drafts(SheetDraft... drafts) {
    return new WorkbookEdit(List.of(), List.of(drafts), List.of(), Removal.NOTHING);
  }

  static WorkbookEdit names(NamedCell... names) {
    return new WorkbookEdit(List.of(), List.of(), List.of(names), Removal.NOTHING);
  }

  static WorkbookEdit remove(List<ColumnPlace> columns, List<String> sheets, List<String> names) {
    return new WorkbookEdit(List.of(), List.of(), List.of(), new Removal(columns, sheets, names));
  }

  static SaveResult save(Path file, WorkbookEdit edit) throws WorkbookRefusal, IOException {
    try (XlsxWorkbook workbook = XlsxWorkbook.open(file, new PlainReplacement())) {
      return workbook.save(edit);
    }
  }

  /** Each change as {@code place: before -> after}. */
  static List<String> preview(Path file, WorkbookEdit edit) throws WorkbookRefusal, IOException {
    List<String> lines = new ArrayList<>();
    try (XlsxWorkbook workbook = XlsxWorkbook.open(file, new PlainReplacement())) {
      workbook.preview(edit, c -> lines.add(words(c)));
    }
    return lines;
  }

  private static String words(CellChange change) {
    return change.place() + ": " + change.before() + " -> " + change.after();
  }

  static String row(int number, String... cells) {
    StringBuilder xml = new StringBuilder("<row r=\"" + number + "\">");
    Arrays.stream(cells).forEach(xml::append);
    return xml.append("</row>").toString();
  }

  static String rows(String... rows) {
    return "<sheetData>" + String.join("", rows) + "</sheetData>";
  }

  /** A number cell. */
  static String n(String place, String value) {
    return "<c r=\"%s\"><v>%s</v></c>".formatted(place, value);
  }

  static String f(String place, String formula, String value) {
    return "<c r=\"%s\"><f>%s</f><v>%s</v></c>".formatted(place, formula, value);
  }
}
