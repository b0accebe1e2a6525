package fineweight.refresh;

import fineweight.refresh.column.MoneyCells;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.workbook.FileFormat;
import fineweight.workbook.Workbook;

/** Refuses a run whose wishes do not fit the workbook. */
final class Unfit {
  private Unfit() {}

  /** A lock is there for a reason, even one without a password. */
  static void refuseProtected(Workbook workbook, String sheet, RefreshWishes wishes)
      throws RefreshRefusal {
    boolean isProtected =
        workbook.sheets().stream().anyMatch(s -> s.name().equals(sheet) && s.isProtected());
    if (isProtected && !wishes.fillProtected()) {
      throw new RefreshRefusal(
          RefreshRefusal.Kind.PROTECTED,
          workbook.path()
              + ", sheet \""
              + sheet
              + "\": it is protected against changes; take the protection off in your office, or run again with --fill-protected, which fills it and keeps the protection.");
    }
  }

  /** A text table holds no formulas. */
  static void refuseCallsInText(Workbook workbook, RefreshWishes wishes) throws RefreshRefusal {
    if (workbook.format() == FileFormat.CSV && wishes.money() == MoneyCells.ADD_IN_FORMULAS) {
      throw new RefreshRefusal(
          RefreshRefusal.Kind.OPTION,
          workbook.path()
              + ": a text table holds no formulas, so the add-in has nothing to calculate in it; leave --add-in-formulas out, or save the list as .xlsx first.");
    }
  }
}
