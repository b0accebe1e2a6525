package fineweight.workbook.xls;

import fineweight.workbook.PageSetup;
import fineweight.workbook.SheetLayout;
import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.SheetSummary.Visibility;
import fineweight.workbook.Workbook.UsedArea;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.hssf.record.BOFRecord;
import org.apache.poi.hssf.record.ProtectRecord;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;

/** Sheets in our words, and what their owner forbids. */
final class XlsSheets {
  private static final int WIDTH_UNITS = 256;
  private static final String SIGNATURES = "_signatures";
  private static final String XML_SIGNATURES = "_xmlsignatures";
  private static final int WIDEST = 255 * WIDTH_UNITS;

  private XlsSheets() {}

  static SheetSummary summary(HSSFWorkbook workbook, int index) {
    HSSFSheet sheet = workbook.getSheetAt(index);
    Visibility visibility =
        switch (workbook.getSheetVisibility(index)) {
          case VISIBLE -> Visibility.VISIBLE;
          case HIDDEN -> Visibility.HIDDEN;
          case VERY_HIDDEN -> Visibility.VERY_HIDDEN;
        };
    return new SheetSummary(
        workbook.getSheetName(index), visibility, sheet.getProtect(), isTable(sheet));
  }

  /** How a sheet of ours is printed. */
  static void setUp(HSSFSheet sheet, PageSetup page) {
    sheet.setFitToPage(true);
    sheet.setAutobreaks(true);
    sheet.getPrintSetup().setLandscape(page.landscape());
    sheet.getPrintSetup().setFitWidth((short) 1);
    sheet.getPrintSetup().setFitHeight((short) 0);
    if (page.repeatedRows() > 0) {
      sheet.setRepeatingRows(new CellRangeAddress(0, page.repeatedRows() - 1, -1, -1));
    }
  }

  static List<String> names(HSSFWorkbook workbook) {
    return IntStream.range(0, workbook.getNumberOfSheets())
        .mapToObj(workbook::getSheetName)
        .toList();
  }

  private static boolean isTable(HSSFSheet sheet) {
    return !(sheet.getSheet().getRecords().get(0) instanceof BOFRecord start)
        || start.getType() == BOFRecord.TYPE_WORKSHEET && !sheet.getDialog();
  }

  /**
   * @throws IllegalArgumentException if the workbook has no such sheet
   */
  static HSSFSheet named(HSSFWorkbook workbook, String name) {
    HSSFSheet sheet = workbook.getSheet(name);
    if (sheet == null) {
      throw new IllegalArgumentException("sheet: the workbook has none named " + name);
    }
    return sheet;
  }

  /** The sheet, if its owner lets us write in it. */
  static HSSFSheet writable(HSSFWorkbook workbook, String name, XlsFile file)
      throws WorkbookRefusal {
    HSSFSheet sheet = named(workbook, name);
    if (sheet.getProtect()) {
      throw file.refusal(
          Kind.PROTECTED,
          ("has its sheet %s protected against changes: take the protection off in your office and"
                  + " run again")
              .formatted(name));
    }
    return sheet;
  }

  static UsedArea usedArea(HSSFSheet sheet) {
    int lastColumn = -1;
    int lastRow = -1;
    for (Row row : sheet) {
      if (row.getLastCellNum() > 0) {
        lastRow = Math.max(lastRow, row.getRowNum());
        lastColumn = Math.max(lastColumn, row.getLastCellNum() - 1);
      }
    }
    return new UsedArea(lastRow, lastColumn);
  }

  static SheetLayout layout(HSSFSheet sheet) {
    List<Area> merged =
        sheet.getMergedRegions().stream()
            .map(
                one ->
                    new Area(
                        one.getFirstRow(),
                        one.getFirstColumn(),
                        one.getLastRow(),
                        one.getLastColumn()))
            .toList();
    return new SheetLayout(List.of(), merged);
  }

  /** Characters in the unit of the format. */
  static int width(double characters) {
    return (int) Math.min(WIDEST, Math.round(characters * WIDTH_UNITS));
  }

  /** Whether sheets may be neither added nor removed. */
  static boolean isStructureLocked(HSSFWorkbook workbook) {
    return workbook.getInternalWorkbook().getRecords().stream()
        .anyMatch(record -> record instanceof ProtectRecord protection && protection.getProtect());
  }

  /**
   * @throws WorkbookRefusal if the workbook as a whole is not to be changed
   */
  static void refuseIfSealed(HSSFWorkbook workbook, XlsFile file) throws WorkbookRefusal {
    if (workbook.isWriteProtected()) {
      throw file.refusal(
          Kind.PROTECTED,
          "asks for a password before it may be changed: save a copy without that password and run"
              + " again on the copy");
    }
    if (workbook.getDirectory().hasEntryCaseInsensitive(SIGNATURES)
        || workbook.getDirectory().hasEntryCaseInsensitive(XML_SIGNATURES)) {
      throw file.refusal(
          Kind.PROTECTED,
          "is signed, and a change would break the signature: save a copy without it and run again"
              + " on the copy");
    }
  }
}
