package fineweight.workbook.xlsx.sheet;

import fineweight.workbook.SheetLayout.Area;
import java.util.List;

/**
 * What one look over a sheet tells.
 *
 * @param lastRow from 0; -1 if it has no cell
 * @param lastColumn from 0; -1 if it has no cell
 * @param formulas how many cells hold a formula
 * @param grouped whether formulas occur that several cells share
 * @param tableRelations the relationship ids of its table objects
 */
public record SheetFacts(
    int lastRow,
    int lastColumn,
    long formulas,
    boolean grouped,
    boolean isProtected,
    List<Area> merged,
    List<String> tableRelations) {
  /** The same for a pass that need not look at formulas. */
  public SheetFacts withoutFormulas() {
    return new SheetFacts(lastRow, lastColumn, 0, false, isProtected, merged, tableRelations);
  }
}
