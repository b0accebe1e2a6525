package fineweight.workbook.xls.formula;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/** Which cells have changed: by sheet and column the rows. */
final class ChangedCells {
  private final Map<Integer, NavigableMap<Integer, BitSet>> sheets = new HashMap<>();

  void add(int sheet, int row, int column) {
    sheets
        .computeIfAbsent(sheet, key -> new TreeMap<>())
        .computeIfAbsent(column, key -> new BitSet())
        .set(row);
  }

  boolean has(int sheet, int row, int column) {
    return touches(new Reference(sheet, row, column, row, column));
  }

  boolean touches(Reference area) {
    NavigableMap<Integer, BitSet> columns = sheets.get(area.sheet);
    if (columns == null) {
      return false;
    }
    for (BitSet rows : columns.subMap(area.firstColumn, true, area.lastColumn, true).values()) {
      int next = rows.nextSetBit(area.firstRow);
      if (next >= 0 && next <= area.lastRow) {
        return true;
      }
    }
    return false;
  }

  /** Cells that a formula looks at. */
  record Reference(int sheet, int firstRow, int firstColumn, int lastRow, int lastColumn) {}
}
