package fineweight.workbook.xlsx.splice;

import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.xlsx.sheet.SheetFacts;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What changes around the cells.
 *
 * @param written the area that our cells take; null for none
 * @param widths of new columns
 * @param gone columns whose width goes with them
 * @param longer areas that follow a list that has got more rows
 */
record Frame(Area written, Map<Integer, Double> widths, Set<Integer> gone, LongerRanges longer) {
  static final Frame UNCHANGED = new Frame(null, Map.of(), Set.of(), LongerRanges.NONE);

  /**
   * @param analysed what a first pass has found
   */
  static Frame of(List<ColumnTarget> targets, SheetFacts facts, Outcome analysed) {
    if (!analysed.touched) {
      return UNCHANGED;
    }
    Map<Integer, Double> widths = new TreeMap<>();
    Set<Integer> gone = new TreeSet<>();
    for (ColumnTarget target : targets) {
      if (target.removes() && target.column() > analysed.lastKeptColumn) {
        gone.add(target.column());
      } else if (!target.removes() && target.width() > 0 && target.column() > facts.lastColumn()) {
        widths.put(target.column(), target.width());
      }
    }
    return new Frame(analysed.written(), widths, gone, LongerRanges.of(targets));
  }

  boolean changesWidths() {
    return !widths.isEmpty() || !gone.isEmpty();
  }
}
