package fineweight.workbook.xlsx.sheet;

import fineweight.workbook.SheetLayout.Area;
import java.util.BitSet;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;

/** Cells of one sheet, a bit for each. */
public final class CellSet {
  private final NavigableMap<Integer, BitSet> rowsByColumn = new TreeMap<>();

  /** Returns whether it was not in yet. */
  public boolean add(int row, int column) {
    BitSet rows = rowsByColumn.computeIfAbsent(column, c -> new BitSet());
    boolean added = !rows.get(row);
    rows.set(row);
    return added;
  }

  public void addAll(Area area) {
    for (int column = area.firstColumn(); column <= area.lastColumn(); column++) {
      rowsByColumn
          .computeIfAbsent(column, c -> new BitSet())
          .set(area.firstRow(), area.lastRow() + 1);
    }
  }

  public boolean contains(int row, int column) {
    BitSet rows = rowsByColumn.get(column);
    return rows != null && rows.get(row);
  }

  public boolean meets(int firstRow, int firstColumn, int lastRow, int lastColumn) {
    for (BitSet rows : rowsByColumn.subMap(firstColumn, true, lastColumn, true).values()) {
      int row = rows.nextSetBit(firstRow);
      if (row >= 0 && row <= lastRow) {
        return true;
      }
    }
    return false;
  }

  public boolean isEmpty() {
    return rowsByColumn.isEmpty();
  }

  /** Row and column of each, column by column. */
  public void forEach(BiConsumer<Integer, Integer> cells) {
    rowsByColumn.forEach((column, rows) -> rows.stream().forEach(row -> cells.accept(row, column)));
  }
}
