package fineweight.workbook.xlsx.splice;

import java.util.List;

/** Tells what the cells of a row shall be. Rows are asked for from top to bottom. */
@FunctionalInterface
interface RowWishes {
  /**
   * @param wishes to be filled, one for each column that is written; null for a cell that stays
   */
  void fill(int row, Wish[] wishes);

  /** Asks the columns. */
  static RowWishes of(List<ColumnTarget> targets) {
    return (row, wishes) -> {
      for (int i = 0; i < wishes.length; i++) {
        wishes[i] = targets.get(i).wish(row);
      }
    };
  }
}
