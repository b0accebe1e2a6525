package fineweight.workbook.xls;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.CellPlace;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.WorkbookEdit.ColumnPlace;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFRow;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.CellRangeAddress;

/** Puts columns into a sheet and takes them out again. */
final class XlsColumns {
  private static final int LAST_COLUMN = SpreadsheetVersion.EXCEL97.getLastColumnIndex();
  private static final int LAST_ROW = SpreadsheetVersion.EXCEL97.getLastRowIndex();

  private final HSSFWorkbook workbook;
  private final XlsFile file;
  private final XlsStyles styles;
  private final XlsPut put;
  private final XlsChanges changes;

  XlsColumns(
      HSSFWorkbook workbook, XlsFile file, XlsStyles styles, XlsPut put, XlsChanges changes) {
    this.workbook = workbook;
    this.file = file;
    this.styles = styles;
    this.put = put;
    this.changes = changes;
  }

  void apply(SheetEdit edit) throws WorkbookRefusal {
    HSSFSheet sheet = XlsSheets.named(workbook, edit.sheet());
    requireRoom(edit, sheet);
    int usedWidth = XlsSheets.usedArea(sheet).lastColumn() + 1;
    for (ColumnEdit column : edit.columns()) {
      apply(column, edit, sheet);
      if (column.column() >= usedWidth && column.width() > 0) {
        sheet.setColumnWidth(column.column(), XlsSheets.width(column.width()));
        changes.other();
      }
    }
  }

  private void apply(ColumnEdit column, SheetEdit edit, HSSFSheet sheet) {
    int at = column.column();
    if (column.header() != null) {
      put.put(
          sheet,
          edit.headerRow(),
          at,
          new CellContent.Text(column.header()),
          () -> neighbour(sheet, edit.headerRow(), at));
    }
    for (int row = edit.firstRow(); row <= edit.lastRow(); row++) {
      CellContent content = column.cells().apply(row);
      if (content != null) {
        int one = row;
        put.put(sheet, row, at, content, () -> look(sheet, one, at, column.look()));
      }
    }
  }

  private HSSFCellStyle look(HSSFSheet sheet, int row, int column, CellLook look) {
    return styles.derived(neighbour(sheet, row, column), look);
  }

  /** The style of the cell on the left, or what its place has without a cell. */
  private HSSFCellStyle neighbour(HSSFSheet sheet, int row, int column) {
    HSSFRow found = sheet.getRow(row);
    HSSFCell left = found == null || column == 0 ? null : found.getCell(column - 1);
    if (left != null) {
      return left.getCellStyle();
    }
    HSSFCellStyle ofRow = found == null ? null : found.getRowStyle();
    HSSFCellStyle ofColumn = column == 0 ? null : sheet.getColumnStyle(column - 1);
    if (ofRow != null) {
      return ofRow;
    }
    return ofColumn != null ? ofColumn : workbook.getCellStyleAt(0);
  }

  private void requireRoom(SheetEdit edit, HSSFSheet sheet) throws WorkbookRefusal {
    for (ColumnEdit column : edit.columns()) {
      if (column.column() > LAST_COLUMN || edit.lastRow() > LAST_ROW) {
        throw file.refusal(
            Kind.NO_ROOM,
            ("has no place for %s in sheet %s, because a .xls file ends with column IV and row"
                    + " 65536: save it as .xlsx and run again")
                .formatted(column.header(), edit.sheet()));
      }
      for (CellRangeAddress merged : sheet.getMergedRegions()) {
        if (merged.isInRange(edit.headerRow(), column.column())
            || merged.containsColumn(column.column())
                && merged.getFirstRow() <= edit.lastRow()
                && merged.getLastRow() >= edit.firstRow()) {
          throw file.refusal(
              Kind.NO_ROOM,
              "has merged cells (%s in sheet %s) where column %s shall stand: split them and run again"
                  .formatted(
                      merged.formatAsString(), edit.sheet(), CellPlace.letters(column.column())));
        }
      }
    }
  }

  void remove(List<ColumnPlace> places) throws WorkbookRefusal {
    for (String name : places.stream().map(ColumnPlace::sheet).distinct().toList()) {
      HSSFSheet sheet = XlsSheets.named(workbook, name);
      NavigableMap<Integer, Integer> headerRows = new TreeMap<>();
      for (ColumnPlace place : places) {
        if (place.sheet().equals(name)) {
          headerRows.put(place.column(), place.headerRow());
          empty(sheet, place);
        }
      }
      cutRightEnd(sheet, headerRows);
    }
  }

  private void empty(HSSFSheet sheet, ColumnPlace place) {
    for (int row = place.headerRow(); row <= sheet.getLastRowNum(); row++) {
      if (XlsCells.cell(sheet, row, place.column()) != null) {
        put.put(sheet, row, place.column(), CellContent.EMPTY, () -> workbook.getCellStyleAt(0));
      }
    }
  }

  /** Cells of a column at the right end go with their format, and the column with its width. */
  private void cutRightEnd(HSSFSheet sheet, NavigableMap<Integer, Integer> headerRows) {
    for (int column : headerRows.descendingKeySet()) {
      if (XlsSheets.usedArea(sheet).lastColumn() > column) {
        return;
      }
      for (int row = headerRows.get(column); row <= sheet.getLastRowNum(); row++) {
        put.remove(sheet, row, column);
      }
      if (XlsSheets.usedArea(sheet).lastColumn() < column) {
        sheet.setColumnWidth(column, XlsSheets.width(sheet.getDefaultColumnWidth()));
      }
    }
  }
}
