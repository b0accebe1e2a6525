package fineweight.workbook.xls;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellPlace;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.WorkbookRefusal;
import java.util.Map;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFRow;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellRangeAddress;

/**
 * Puts rows under a list. Areas of drop-downs and conditional formats stay as they are: this format
 * shares them between rules in ways that are not ours to change.
 */
final class XlsRows {
  private static final int LAST_ROW = SpreadsheetVersion.EXCEL97.getLastRowIndex();

  private final HSSFWorkbook workbook;
  private final XlsFile file;
  private final XlsPut put;
  private final XlsChanges changes;

  XlsRows(HSSFWorkbook workbook, XlsFile file, XlsPut put, XlsChanges changes) {
    this.workbook = workbook;
    this.file = file;
    this.put = put;
    this.changes = changes;
  }

  void apply(RowsEdit edit) throws WorkbookRefusal {
    HSSFSheet sheet = XlsSheets.writable(workbook, edit.sheet(), file);
    if (edit.newLastRow() > LAST_ROW) {
      throw edit.refusal("a .xls file ends with row 65536");
    }
    refuseMerged(sheet, edit);
    for (int row = edit.lastRow() + 1; row <= edit.newLastRow(); row++) {
      for (int column = edit.firstColumn(); column <= edit.lastColumn(); column++) {
        refuseFilled(sheet, edit, row, column);
      }
    }
    for (Map.Entry<Integer, Map<Integer, CellContent>> row : edit.corrections().entrySet()) {
      row.getValue().keySet().forEach(column -> write(sheet, edit, row.getKey(), column));
    }
    for (int row = edit.lastRow() + 1; row <= edit.newLastRow(); row++) {
      for (int column = edit.firstColumn(); column <= edit.lastColumn(); column++) {
        write(sheet, edit, row, column);
      }
    }
  }

  private static void refuseMerged(HSSFSheet sheet, RowsEdit edit) throws WorkbookRefusal {
    CellRangeAddress wanted =
        new CellRangeAddress(
            edit.lastRow() + 1,
            Math.max(edit.lastRow() + 1, edit.newLastRow()),
            edit.firstColumn(),
            edit.lastColumn());
    for (CellRangeAddress merged : sheet.getMergedRegions()) {
      if (!edit.rows().isEmpty() && merged.intersects(wanted)) {
        throw edit.refusal("the cells " + merged.formatAsString() + " are merged");
      }
    }
  }

  private CellContent wanted(RowsEdit edit, int row, int column) {
    boolean counts1904 = workbook.getInternalWorkbook().isUsing1904DateWindowing();
    return edit.wanted(row, column) instanceof CellContent.Day day
        ? day.serial(counts1904)
        : edit.wanted(row, column);
  }

  private void refuseFilled(HSSFSheet sheet, RowsEdit edit, int row, int column)
      throws WorkbookRefusal {
    HSSFCell cell = XlsCells.cell(sheet, row, column);
    CellContent content = wanted(edit, row, column);
    boolean blank = cell == null || cell.getCellType() == CellType.BLANK;
    boolean same = content != null && XlsPut.holds(cell, content);
    if (!blank && !same && !isFilledDown(sheet, edit, cell, content)) {
      throw edit.refusal(
          "\"%s\" stands in cell %s"
              .formatted(XlsCells.result(cell), new CellPlace(sheet.getSheetName(), row, column)));
    }
  }

  private static boolean isFilledDown(
      HSSFSheet sheet, RowsEdit edit, HSSFCell cell, CellContent content) {
    return content == null
        && XlsCells.isFormula(cell)
        && XlsCells.isFormula(XlsCells.cell(sheet, edit.lastRow(), cell.getColumnIndex()));
  }

  private void write(HSSFSheet sheet, RowsEdit edit, int row, int column) {
    HSSFCell model = edit.underHeadings() ? null : XlsCells.cell(sheet, edit.lastRow(), column);
    HSSFCellStyle style = model == null ? workbook.getCellStyleAt(0) : model.getCellStyle();
    CellContent content = wanted(edit, row, column);
    if (content != null) {
      put.put(sheet, row, column, content, () -> style);
    } else if (style.getIndex() != workbook.getCellStyleAt(0).getIndex()
        && XlsCells.cell(sheet, row, column) == null) {
      HSSFRow found = sheet.getRow(row);
      (found == null ? sheet.createRow(row) : found).createCell(column).setCellStyle(style);
      changes.look(new CellPlace(sheet.getSheetName(), row, column));
    }
  }
}
