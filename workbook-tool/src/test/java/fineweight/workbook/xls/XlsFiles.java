package fineweight.workbook.xls;

import fineweight.workbook.Cell;
import fineweight.workbook.CellChange;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookEdit.ColumnPlace;
import fineweight.workbook.WorkbookEdit.Removal;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.save.SafeSave;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Row;

/** What the tests of this package do with a workbook. */
final class XlsFiles {
  private XlsFiles() {}

  static XlsWorkbook open(Path file) throws WorkbookRefusal {
    return XlsWorkbook.open(file, SafeSave.onDisk());
  }

  /** Written by POI alone. */
  static Path write(HSSFWorkbook workbook, Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      workbook.write(out);
    }
    workbook.close();
    return file;
  }

  /** Read by POI alone. */
  static HSSFWorkbook poi(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new HSSFWorkbook(in);
    }
  }

  /** A header and rows of texts and numbers from the top left. */
  static HSSFSheet table(HSSFWorkbook workbook, String name, Object[]... rows) {
    HSSFSheet sheet = workbook.createSheet(name);
    for (int i = 0; i < rows.length; i++) {
      Row row = sheet.createRow(i);
      for (int j = 0; j < rows[i].length; j++) {
        if (rows[i][j] instanceof Number number) {
          row.createCell(j).setCellValue(number.doubleValue());
        } else if (rows[i][j] instanceof String text && text.startsWith("=")) {
          row.createCell(j).setCellFormula(text.substring(1));
        } else if (rows[i][j] != null) {
          row.createCell(j).setCellValue(rows[i][j].toString());
        }
      }
    }
    return sheet;
  }

  static Object[] row(Object... cells) {
    return cells;
  }

  static ColumnEdit column(
      int column, String header, String format, IntFunction<CellContent> cells) {
    return new ColumnEdit(
        column, header, format.isEmpty() ? CellLook.GENERAL : CellLook.number(format), 12, cells);
  }

  static WorkbookEdit columns(String sheet, int lastRow, ColumnEdit... columns) {
    return new WorkbookEdit(
        List.of(new SheetEdit(sheet, 0, 1, lastRow, Arrays.asList(columns))),
        List.of(),
        List.of(),
        Removal.NOTHING);
  }

  static WorkbookEdit without(String sheet, int... columns) {
    List<ColumnPlace> places =
        Arrays.stream(columns).mapToObj(column -> new ColumnPlace(sheet, 0, column)).toList();
    return new WorkbookEdit(
        List.of(), List.of(), List.of(), new Removal(places, List.of(), List.of()));
  }

  static List<CellChange> changes(Path file, WorkbookEdit edit) throws Exception {
    List<CellChange> changes = new ArrayList<>();
    try (XlsWorkbook workbook = open(file)) {
      workbook.preview(edit, changes::add);
    }
    return changes;
  }

  static List<Cell> cells(Path file, String sheet) throws Exception {
    List<Cell> cells = new ArrayList<>();
    try (XlsWorkbook workbook = open(file)) {
      workbook.read(sheet, column -> true, Integer.MAX_VALUE, cells::addAll);
    }
    return cells;
  }
}
