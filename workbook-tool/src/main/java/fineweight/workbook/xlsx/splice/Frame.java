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
 */
record Frame(Area written, Map<Integer, Double> widths, Set<Integer> gone) {
  static final Frame UNCHANGED = new Frame(null, Map.of(), Set.of());

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
    Area written = analysed.partial ? ours(targets) : analysed.written();
    return new Frame(written, widths, gone);
  }

  /** The area of all that we want to stand there, changed or not; null for none. */
  private static Area ours(List<ColumnTarget> targets) {
    Outcome all = new Outcome(false);
    for (ColumnTarget target : targets) {
      int top = Math.min(target.headerRow(), target.firstRow());
      int bottom = Math.max(target.headerRow(), target.lastRow());
      while (top <= bottom && !writes(target, top)) {
        top++;
      }
      while (bottom > top && !writes(target, bottom)) {
        bottom--;
      }
      if (top <= bottom) {
        all.wrote(top, target.column());
        all.wrote(bottom, target.column());
      }
    }
    return all.written();
  }

  private static boolean writes(ColumnTarget target, int row) {
    Wish wish = target.wish(row);
    return wish != null && wish.writes();
  }

  boolean changesWidths() {
    return !widths.isEmpty() || !gone.isEmpty();
  }
}
