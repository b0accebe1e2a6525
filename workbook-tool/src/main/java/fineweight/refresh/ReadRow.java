package fineweight.refresh;

import fineweight.column.Appraisal;

/**
 * A row of the inventory as read. Immutable.
 *
 * @param row from 0
 * @param appraisal what was found out; null if the row is no coin (a total, a heading)
 * @param key the number of the piece, empty if it has none yet
 * @param money cost and lot
 */
record ReadRow(int row, Appraisal appraisal, String key, Money money) {
  static ReadRow notACoin(int row) {
    return new ReadRow(row, null, "", Money.NONE);
  }

  boolean isCoin() {
    return appraisal != null;
  }
}
