package fineweight.workbook.xls;

import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFDataValidation;
import org.apache.poi.hssf.usermodel.HSSFHyperlink;
import org.apache.poi.hssf.usermodel.HSSFRow;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.PaneInformation;

/**
 * Sheets of our own. One that is there already is filled anew in its place, so that formulas of the
 * owner's that look into it stay valid; a list to choose from that is no longer wanted stays. There
 * are no charts: the library can make none in this format.
 */
final class XlsDrafts {
  private final HSSFWorkbook workbook;
  private final XlsFile file;
  private final XlsStyles styles;
  private final XlsPut put;
  private final XlsChanges changes;

  XlsDrafts(HSSFWorkbook workbook, XlsFile file, XlsStyles styles, XlsPut put, XlsChanges changes) {
    this.workbook = workbook;
    this.file = file;
    this.styles = styles;
    this.put = put;
    this.changes = changes;
  }

  /** Makes sure the sheet is there, empty if it is new, so that names can refer to it. */
  void place(SheetDraft draft) throws WorkbookRefusal {
    requireRoom(draft);
    if (workbook.getSheet(draft.name()) == null) {
      requireUnlocked();
      HSSFSheet sheet = workbook.createSheet(draft.name());
      draft.page().ifPresent(page -> XlsSheets.setUp(sheet, page));
      changes.other();
    }
    int index = workbook.getSheetIndex(draft.name());
    SheetVisibility wanted = draft.hidden() ? SheetVisibility.HIDDEN : SheetVisibility.VISIBLE;
    if (workbook.getSheetVisibility(index) != wanted) {
      workbook.setSheetVisibility(index, wanted);
      changes.other();
    }
  }

  void fill(SheetDraft draft) throws WorkbookRefusal {
    HSSFSheet sheet = XlsSheets.writable(workbook, draft.name(), file);
    removeSurplus(draft, sheet);
    for (int row = 0; row < draft.rows().size(); row++) {
      List<DraftCell> cells = Objects.requireNonNullElse(draft.rows().get(row), List.of());
      for (int column = 0; column < cells.size(); column++) {
        DraftCell cell = cells.get(column);
        if (cell != null) {
          put.put(
              sheet, row, column, cell.content(), () -> styles.drafted(cell.kind(), cell.look()));
          link(sheet, row, column, cell.link());
        }
      }
    }
    arrange(draft, sheet);
    draft.dropDowns().forEach((area, list) -> offer(sheet, area, list));
  }

  void remove(String name) throws WorkbookRefusal {
    int index = workbook.getSheetIndex(name);
    if (index < 0) {
      return;
    }
    requireUnlocked();
    HSSFSheet sheet = workbook.getSheetAt(index);
    for (Row row : sheet) {
      for (int column = row.getLastCellNum() - 1; column >= 0; column--) {
        put.remove(sheet, row.getRowNum(), column);
      }
    }
    workbook.removeSheetAt(index);
    changes.other();
  }

  private void requireUnlocked() throws WorkbookRefusal {
    if (XlsSheets.isStructureLocked(workbook)) {
      throw file.refusal(
          Kind.PROTECTED,
          "is protected against new and removed sheets: take the protection off in your office and"
              + " run again");
    }
  }

  private void requireRoom(SheetDraft draft) throws WorkbookRefusal {
    int width = draft.rows().stream().filter(Objects::nonNull).mapToInt(List::size).max().orElse(0);
    if (draft.rows().size() > SpreadsheetVersion.EXCEL97.getMaxRows()
        || width > SpreadsheetVersion.EXCEL97.getMaxColumns()) {
      throw file.refusal(
          Kind.NO_ROOM,
          "has no place for the sheet %s, because a .xls file ends with column IV and row 65536: save it as .xlsx and run again"
              .formatted(draft.name()));
    }
  }

  private void removeSurplus(SheetDraft draft, HSSFSheet sheet) {
    for (int row = 0; row <= sheet.getLastRowNum(); row++) {
      HSSFRow found = sheet.getRow(row);
      int width = found == null ? 0 : found.getLastCellNum();
      for (int column = 0; column < width; column++) {
        if (!wants(draft, row, column)) {
          put.remove(sheet, row, column);
        }
      }
    }
  }

  private static boolean wants(SheetDraft draft, int row, int column) {
    List<DraftCell> cells = row < draft.rows().size() ? draft.rows().get(row) : null;
    return cells != null && column < cells.size() && cells.get(column) != null;
  }

  private void link(HSSFSheet sheet, int row, int column, String target) {
    HSSFCell cell = XlsCells.cell(sheet, row, column);
    if (cell == null) {
      return;
    }
    HSSFHyperlink present = cell.getHyperlink();
    String before = present == null ? "" : Objects.requireNonNullElse(present.getAddress(), "");
    if (before.equals(target)) {
      return;
    }
    if (present != null) {
      cell.removeHyperlink();
    }
    if (!target.isEmpty()) {
      HSSFHyperlink link = workbook.getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
      link.setAddress(target);
      cell.setHyperlink(link);
    }
    changes.other();
  }

  private void arrange(SheetDraft draft, HSSFSheet sheet) {
    for (Map.Entry<Integer, Double> width : draft.widths().entrySet()) {
      int units = XlsSheets.width(width.getValue());
      if (sheet.getColumnWidth(width.getKey()) != units) {
        sheet.setColumnWidth(width.getKey(), units);
        changes.other();
      }
    }
    PaneInformation pane = sheet.getPaneInformation();
    int frozen = pane == null ? 0 : pane.getHorizontalSplitPosition();
    if (frozen != draft.frozenRows()) {
      sheet.createFreezePane(0, draft.frozenRows());
      changes.other();
    }
  }

  private void offer(HSSFSheet sheet, String area, String list) {
    CellRangeAddressList cells = new CellRangeAddressList();
    cells.addCellRangeAddress(CellRangeAddress.valueOf(area));
    DataValidationHelper helper = sheet.getDataValidationHelper();
    DataValidationConstraint constraint =
        list.startsWith("\"")
            ? helper.createExplicitListConstraint(list.replace("\"", "").split(","))
            : helper.createFormulaListConstraint(list);
    if (!isOffered(sheet, cells, constraint)) {
      sheet.addValidationData(helper.createValidation(constraint, cells));
      changes.other();
    }
  }

  private static boolean isOffered(
      HSSFSheet sheet, CellRangeAddressList cells, DataValidationConstraint wanted) {
    for (HSSFDataValidation present : sheet.getDataValidations()) {
      DataValidationConstraint constraint = present.getValidationConstraint();
      if (constraint.getValidationType() == DataValidationConstraint.ValidationType.LIST
          && present.getRegions().getCellRangeAddress(0).equals(cells.getCellRangeAddress(0))
          && Arrays.equals(constraint.getExplicitListValues(), wanted.getExplicitListValues())
          && Objects.equals(constraint.getFormula1(), wanted.getFormula1())) {
        return true;
      }
    }
    return false;
  }
}
