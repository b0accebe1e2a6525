package fineweight.refresh.inventory;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The number of the piece in each row: the owner's own where every piece has one, else ours. A
 * number once given never changes.
 */
public final class PieceNumbers {
  private final Map<Integer, String> byRow = new HashMap<>();
  private final boolean ours;

  private PieceNumbers(boolean ours) {
    this.ours = ours;
  }

  /** The numbers of the rows read; pieces without one get the next free number. */
  public static PieceNumbers of(RowReader reader) {
    PieceNumbers numbers = new PieceNumbers(!reader.hasOwnKeys());
    if (numbers.ours) {
      numbers.give(reader.rows());
    } else {
      reader.rows().forEach(row -> numbers.byRow.put(row.row(), row.key()));
    }
    return numbers;
  }

  /** For where there is no inventory. */
  public static PieceNumbers none() {
    return new PieceNumbers(false);
  }

  private void give(List<ReadRow> read) {
    Set<String> used = new HashSet<>();
    long largest = 0;
    for (ReadRow row : read) {
      if (row.isCoin() && row.key().matches("\\d{1,9}") && used.add(row.key())) {
        byRow.put(row.row(), row.key());
        largest = Math.max(largest, Long.parseLong(row.key()));
      }
    }
    for (ReadRow row : read) {
      if (row.isCoin() && !byRow.containsKey(row.row())) {
        byRow.put(row.row(), Long.toString(++largest));
      }
    }
  }

  /** Whether the numbers stand in a column of ours. */
  public boolean areOurs() {
    return ours;
  }

  /** The number of the piece in a row (from 0); empty text where the row is no piece. */
  public String of(int row) {
    return byRow.getOrDefault(row, "");
  }
}
