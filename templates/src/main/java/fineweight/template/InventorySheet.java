package fineweight.template;

import fineweight.column.CalculatedColumn;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PageOrder;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.usermodel.PrintOrientation;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** The sheet on which a collector lists his coins. */
final class InventorySheet {
  /** Columns that a refresh adds only where they are needed. */
  private static final Set<CalculatedColumn> SELDOM =
      EnumSet.of(CalculatedColumn.KEY, CalculatedColumn.PLATINUM, CalculatedColumn.PALLADIUM);

  private static final double MARGIN_INCHES = 0.3;

  /** Rows that have drop-downs and hints. */
  static final int LAST_ROW = 2000;

  private final XSSFSheet sheet;
  private final Looks looks;
  private final List<InventoryColumn> columns;
  private final WorkbookKind kind;

  InventorySheet(XSSFSheet sheet, Looks looks, WorkbookKind kind) {
    this.sheet = sheet;
    this.kind = kind;
    this.columns = kind.columns();
    this.looks = looks;
  }

  void fill(List<List<String>> rows) {
    headings();
    for (int row = 0; row < rows.size(); row++) {
      fill(sheet.createRow(row + 1), rows.get(row));
    }
    for (int place = 0; place < columns.size(); place++) {
      InventoryColumn column = columns.get(place);
      sheet.setColumnWidth(place, (int) (column.width() * 256));
      sheet.setDefaultColumnStyle(place, looks.of(column));
    }
    new Entries(sheet, LAST_ROW, kind).add();
    // The filter reaches over what a refresh will add.
    int last = lastOf(CalculatedColumn.values().length);
    sheet.setAutoFilter(new CellRangeAddress(0, Math.max(1, rows.size()), 0, last));
    sheet.createFreezePane(1, 1);
    print();
  }

  private void headings() {
    XSSFRow row = sheet.createRow(0);
    row.setHeightInPoints(32);
    for (int place = 0; place < columns.size(); place++) {
      InventoryColumn column = columns.get(place);
      XSSFCell cell = row.createCell(place);
      cell.setCellValue(column.heading());
      cell.setCellStyle(looks.ofHeader(column));
    }
  }

  private void fill(XSSFRow row, List<String> texts) {
    for (int place = 0; place < columns.size(); place++) {
      InventoryColumn column = columns.get(place);
      String text = texts.get(place);
      XSSFCell cell = row.createCell(place);
      cell.setCellStyle(looks.of(column));
      if (text.matches("[0-9]+(\\.[0-9]+)?") && column != InventoryColumn.CERTIFICATE) {
        cell.setCellValue(Double.parseDouble(text));
      } else if (!text.isEmpty()) {
        cell.setCellValue(text);
      }
    }
  }

  /** One page wide, with the headings on every page and without the long texts at the right end. */
  private void print() {
    XSSFPrintSetup setup = sheet.getPrintSetup();
    setup.setPaperSize(PaperSize.A4_PAPER);
    setup.setOrientation(PrintOrientation.LANDSCAPE);
    setup.setPageOrder(PageOrder.OVER_THEN_DOWN);
    sheet.setFitToPage(true);
    sheet.setPrintGridlines(true);
    setup.setFitWidth((short) 1);
    setup.setFitHeight((short) 0);
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    for (PageMargin margin : List.of(PageMargin.LEFT, PageMargin.RIGHT)) {
      sheet.setMargin(margin, MARGIN_INCHES);
    }
    int last = lastOf(CalculatedColumn.MELT_AT_MOST.ordinal() + 1);
    String printed = "$A:$" + CellReference.convertNumToColString(last);
    sheet.getWorkbook().setPrintArea(sheet.getWorkbook().getSheetIndex(sheet), printed);
    sheet.getFooter().setCenter("&A, page &P of &N");
  }

  /** The place from 0 of the last of the first calculated columns, behind the typed ones. */
  private int lastOf(int calculated) {
    long added =
        Arrays.stream(CalculatedColumn.values())
            .limit(calculated)
            .filter(column -> !SELDOM.contains(column))
            .count();
    return columns.size() - 1 + (int) added;
  }
}
