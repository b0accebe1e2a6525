package fineweight.workbook.xlsx;

import fineweight.workbook.CellPlace;
import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.part.CellRef;
import fineweight.workbook.xlsx.part.TablePart;
import fineweight.workbook.xlsx.splice.ColumnTarget;
import java.util.List;

/** Where columns may be put. */
final class TargetRules {
  private TargetRules() {}

  static void check(OpenedSheet sheet, List<ColumnTarget> targets) throws WorkbookRefusal {
    for (ColumnTarget target : targets) {
      CellPlace place = new CellPlace(sheet.name(), target.headerRow(), target.column());
      if (target.column() >= CellRef.COLUMNS || target.lastRow() >= CellRef.ROWS) {
        throw refusal(
            "The column at %s would lie beyond the sheet's end; save the list on a new sheet.",
            place);
      }
      if (target.removes()) {
        continue;
      }
      for (Area area : sheet.facts().merged()) {
        if (meets(target, area)) {
          throw refusal("The column at %s runs into merged cells; unmerge them first.", place);
        }
      }
      for (TablePart table : sheet.tables()) {
        if (meets(target, table.table().area())) {
          throw refusal(
              "The column at %s lies in the table "
                  + table.table().name()
                  + "; make that table narrower first.",
              place);
        }
      }
    }
  }

  private static boolean meets(ColumnTarget target, Area area) {
    boolean inRows =
        target.lastRow() >= area.firstRow() && target.firstRow() <= area.lastRow()
            || target.headerRow() >= area.firstRow() && target.headerRow() <= area.lastRow();
    return inRows && target.column() >= area.firstColumn() && target.column() <= area.lastColumn();
  }

  private static WorkbookRefusal refusal(String sentence, CellPlace place) {
    return new WorkbookRefusal(WorkbookRefusal.Kind.NO_ROOM, sentence.formatted(place));
  }
}
