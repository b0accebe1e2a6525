package fineweight.workbook.xlsx.formula;

import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.xlsx.part.CellRef;
import fineweight.workbook.xlsx.sheet.CellSet;
import java.util.List;

/**
 * An area that a formula looks at. A relative bound is kept as distance from the formula's cell, so
 * that a formula filled down is one and the same.
 *
 * @param firstSheet by number; {@link #OWN} for the formula's own sheet
 * @param lastSheet the same, counted in
 */
record Reference(int firstSheet, int lastSheet, Corner first, Corner last) {
  static final int OWN = -1;

  /**
   * @param row a row from 0, or the distance from the formula's row
   * @param column the same
   */
  record Corner(int row, boolean rowMoves, int column, boolean columnMoves) {
    static Corner fixed(int row, int column) {
      return new Corner(row, false, column, false);
    }

    int rowFrom(int formulaRow) {
      return rowMoves ? row + formulaRow : row;
    }

    int columnFrom(int formulaColumn) {
      return columnMoves ? column + formulaColumn : column;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Corner corner
          && row == corner.row
          && rowMoves == corner.rowMoves
          && column == corner.column
          && columnMoves == corner.columnMoves;
    }

    @Override
    public int hashCode() {
      return (row * 31 + column) * 4 + (rowMoves ? 2 : 0) + (columnMoves ? 1 : 0);
    }
  }

  static Reference cells(int sheet, Corner first, Corner last) {
    return new Reference(sheet, sheet, first, last);
  }

  /** Whether one of the cells is in the area, for the formula in that cell. */
  boolean meets(int sheet, int row, int column, List<CellSet> cells) {
    int from = firstSheet == OWN ? sheet : firstSheet;
    int to = firstSheet == OWN ? sheet : lastSheet;
    int top = first.rowFrom(row);
    int bottom = last.rowFrom(row);
    int left = first.columnFrom(column);
    int right = last.columnFrom(column);
    for (int i = from; i <= to; i++) {
      if (cells
          .get(i)
          .meets(
              Math.max(0, Math.min(top, bottom)),
              Math.max(0, Math.min(left, right)),
              Math.min(CellRef.ROWS - 1, Math.max(top, bottom)),
              Math.min(CellRef.COLUMNS - 1, Math.max(left, right)))) {
        return true;
      }
    }
    return false;
  }

  /** Adds the area, as far as its sheets reach, for the formula in that cell. */
  void addTo(List<CellSet> cells, List<Area> limits, int sheet, int row, int column) {
    int from = firstSheet == OWN ? sheet : firstSheet;
    int to = firstSheet == OWN ? sheet : lastSheet;
    int top = first.rowFrom(row);
    int bottom = last.rowFrom(row);
    int left = first.columnFrom(column);
    int right = last.columnFrom(column);
    for (int i = Math.max(from, 0); i <= to; i++) {
      Area area =
          new Area(
              Math.max(0, Math.min(top, bottom)),
              Math.max(0, Math.min(left, right)),
              Math.min(limits.get(i).lastRow(), Math.max(top, bottom)),
              Math.min(limits.get(i).lastColumn(), Math.max(left, right)));
      if (area.firstRow() <= area.lastRow() && area.firstColumn() <= area.lastColumn()) {
        cells.get(i).addAll(area);
      }
    }
  }

  boolean touchesSheet(int sheet) {
    return firstSheet <= sheet && sheet <= lastSheet;
  }

  /** What a record has of itself is linked at run time, which slows every start. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Reference reference
        && firstSheet == reference.firstSheet
        && lastSheet == reference.lastSheet
        && first.equals(reference.first)
        && last.equals(reference.last);
  }

  @Override
  public int hashCode() {
    return ((firstSheet * 31 + lastSheet) * 31 + first.hashCode()) * 31 + last.hashCode();
  }
}
