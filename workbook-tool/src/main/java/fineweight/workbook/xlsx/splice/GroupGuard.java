package fineweight.workbook.xlsx.splice;

import fineweight.workbook.CellPlace;
import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.part.CellRef;
import fineweight.workbook.xlsx.sheet.CellXml;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Keeps us from tearing formulas apart that several cells share: array and table areas always, a
 * shared formula if its first cell would go and another stay.
 */
final class GroupGuard {
  private final String sheet;
  private final List<ColumnTarget> targets;
  private final List<Area> areas = new ArrayList<>();
  private final Map<Integer, CellPlace> mastersGone = new HashMap<>();
  private final Set<Integer> membersKept = new HashSet<>();

  GroupGuard(String sheet, List<ColumnTarget> targets) {
    this.sheet = sheet;
    this.targets = targets;
  }

  /** Every cell must be shown. */
  void see(CellXml cell, boolean goes) throws WorkbookRefusal {
    if (cell.isFormula()) {
      if (cell.formulaKind().equals("shared")) {
        shared(cell, goes);
      } else if (!cell.formulaKind().equals("normal")) {
        Area area = CellRef.area(cell.formulaArea());
        note(area == null ? new Area(cell.row(), cell.column(), cell.row(), cell.column()) : area);
      }
    }
    if (goes) {
      refuseInside(cell.row(), cell.column());
    }
  }

  /** Areas beside our columns do not matter, and there may be very many. */
  private void note(Area area) {
    for (ColumnTarget target : targets) {
      if (target.column() >= area.firstColumn() && target.column() <= area.lastColumn()) {
        areas.add(area);
        return;
      }
    }
  }

  private void shared(CellXml cell, boolean goes) {
    if (!goes) {
      membersKept.add(cell.sharedGroup());
    } else if (!cell.formulaText().isEmpty()) {
      mastersGone.put(cell.sharedGroup(), new CellPlace(sheet, cell.row(), cell.column()));
    }
  }

  /** For a cell that shall be written, whether it is there yet or not. */
  void refuseInside(int row, int column) throws WorkbookRefusal {
    for (Area area : areas) {
      if (CellRef.contains(area, row, column)) {
        throw refusal(new CellPlace(sheet, row, column));
      }
    }
  }

  void finish() throws WorkbookRefusal {
    for (Map.Entry<Integer, CellPlace> gone : mastersGone.entrySet()) {
      if (membersKept.contains(gone.getKey())) {
        throw refusal(gone.getValue());
      }
    }
  }

  private static WorkbookRefusal refusal(CellPlace place) {
    return new WorkbookRefusal(
        WorkbookRefusal.Kind.NO_ROOM,
        "Cell "
            + place
            + " belongs to a formula that other cells share, so it cannot be replaced; "
            + "move that formula to another column first.");
  }
}
