package fineweight.workbook.oracle.formula;

import fineweight.workbook.CellPlace;
import fineweight.workbook.oracle.parts.Places.Area;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** Cells that changed or depend on one that did, quick to ask for a whole area. */
final class DirtyCells {
  private final Map<String, NavigableMap<Integer, TreeSet<Integer>>> rowsByColumn = new HashMap<>();

  void add(CellPlace place) {
    sheet(place.sheet()).computeIfAbsent(place.column(), c -> new TreeSet<>()).add(place.row());
  }

  void add(Area area) {
    for (int column = area.firstColumn(); column <= area.lastColumn(); column++) {
      for (int row = area.firstRow(); row <= area.lastRow(); row++) {
        add(new CellPlace(area.sheet(), row, column));
      }
    }
  }

  boolean touches(Area area) {
    return sheet(area.sheet())
        .subMap(area.firstColumn(), true, Math.max(area.firstColumn(), area.lastColumn()), true)
        .values()
        .stream()
        .map(rows -> rows.ceiling(area.firstRow()))
        .anyMatch(row -> row != null && row <= area.lastRow());
  }

  private NavigableMap<Integer, TreeSet<Integer>> sheet(String name) {
    return rowsByColumn.computeIfAbsent(name.toLowerCase(Locale.ROOT), s -> new TreeMap<>());
  }
}
