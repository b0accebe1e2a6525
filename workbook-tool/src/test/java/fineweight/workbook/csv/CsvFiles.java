package fineweight.workbook.csv;

import fineweight.workbook.Cell;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.CellValue;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookEdit.ColumnPlace;
import fineweight.workbook.WorkbookEdit.Removal;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.save.SafeSave;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;

/** What the tests of this package do with a text table. */
final class CsvFiles {
  private CsvFiles() {}

  static CsvWorkbook open(Path file) throws WorkbookRefusal {
    return CsvWorkbook.open(file, SafeSave.onDisk());
  }

  static ColumnEdit column(int column, String header, IntFunction<CellContent> cells) {
    return new ColumnEdit(column, header, CellLook.GENERAL, 0, cells);
  }

  /** Columns under a header in the first row, for the rows up to a last one. */
  static WorkbookEdit columns(int lastRow, ColumnEdit... columns) {
    return new WorkbookEdit(
        List.of(new SheetEdit("", 0, 1, lastRow, Arrays.asList(columns))),
        List.of(),
        List.of(),
        Removal.NOTHING);
  }

  static WorkbookEdit without(int... columns) {
    List<ColumnPlace> places =
        Arrays.stream(columns).mapToObj(column -> new ColumnPlace("", 0, column)).toList();
    return new WorkbookEdit(
        List.of(), List.of(), List.of(), new Removal(places, List.of(), List.of()));
  }

  /** Each row that is not blank, as its place and texts. */
  static List<String> rows(CsvWorkbook workbook) throws WorkbookRefusal {
    List<String> rows = new ArrayList<>();
    workbook.read("", column -> true, Integer.MAX_VALUE, cells -> rows.add(words(cells)));
    return rows;
  }

  private static String words(List<Cell> cells) {
    StringBuilder words = new StringBuilder();
    for (Cell cell : cells) {
      words.append(words.isEmpty() ? "" : " ").append(cell.place()).append('=');
      words.append(((CellValue.Text) cell.value()).value());
    }
    return words.toString();
  }
}
