package fineweight.workbook.xlsx.sheet;

import fineweight.workbook.SheetLayout.Area;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.IntConsumer;

/** Cells of one sheet, a bit for each. */
public final class CellSet {
  private static final BitSet NONE = new BitSet();

  private BitSet[] rowsByColumn = new BitSet[0];

  /** Sets of the same cells, each to be changed by itself. */
  public static List<CellSet> copies(List<CellSet> sets) {
    List<CellSet> copies = new ArrayList<>();
    for (CellSet each : sets) {
      CellSet copy = new CellSet();
      each.forEach(copy::add);
      copies.add(copy);
    }
    return copies;
  }

  /** These cells but for others. */
  public CellSet without(CellSet others) {
    CellSet left = new CellSet();
    forEach(
        (row, column) -> {
          if (!others.contains(row, column)) {
            left.add(row, column);
          }
        });
    return left;
  }

  /** Whether a column has any of the cells. */
  public boolean hasColumn(int column) {
    return !rows(column).isEmpty();
  }

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

  /** The rows of one column. */
  public void forEach(int column, IntConsumer taker) {
    rows(column).stream().forEach(taker);
  }

  /** Row and column of each, column by column. */
  public void forEach(BiConsumer<Integer, Integer> cells) {
    for (int i = 0; i < rowsByColumn.length; i++) {
      int column = i;
      rows(column).stream().forEach(row -> cells.accept(row, column));
    }
  }
}
