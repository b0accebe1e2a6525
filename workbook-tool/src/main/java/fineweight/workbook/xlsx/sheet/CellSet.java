package fineweight.workbook.xlsx.sheet;

import fineweight.workbook.SheetLayout.Area;
import java.util.Arrays;
import java.util.BitSet;
import java.util.function.BiConsumer;

/** Cells of one sheet, a bit for each. */
public final class CellSet {
  private static final BitSet NONE = new BitSet();

  private BitSet[] rowsByColumn = new BitSet[0];

  private BitSet rows(int column) {
    return column < rowsByColumn.length && rowsByColumn[column] != null
        ? rowsByColumn[column]
        : NONE;
  }

  private BitSet rowsToChange(int column) {
    if (column >= rowsByColumn.length) {
      rowsByColumn = Arrays.copyOf(rowsByColumn, column + 1);
    }
    if (rowsByColumn[column] == null) {
      rowsByColumn[column] = new BitSet();
    }
    return rowsByColumn[column];
  }

  /** Returns whether it was not in yet. */
  public boolean add(int row, int column) {
    BitSet rows = rowsToChange(column);
    boolean added = !rows.get(row);
    rows.set(row);
    return added;
  }

  public void addAll(Area area) {
    for (int column = area.firstColumn(); column <= area.lastColumn(); column++) {
      rowsToChange(column).set(area.firstRow(), area.lastRow() + 1);
    }
  }

  public boolean contains(int row, int column) {
    return rows(column).get(row);
  }

  public boolean meets(int firstRow, int firstColumn, int lastRow, int lastColumn) {
    int last = Math.min(lastColumn, rowsByColumn.length - 1);
    for (int column = firstColumn; column <= last; column++) {
      int row = rows(column).nextSetBit(firstRow);
      if (row >= 0 && row <= lastRow) {
        return true;
      }
    }
    return false;
  }

  public boolean isEmpty() {
    for (BitSet rows : rowsByColumn) {
      if (rows != null && !rows.isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /** Row and column of each, column by column. */
  public void forEach(BiConsumer<Integer, Integer> cells) {
    for (int i = 0; i < rowsByColumn.length; i++) {
      int column = i;
      rows(column).stream().forEach(row -> cells.accept(row, column));
    }
  }
}
