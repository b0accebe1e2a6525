package fineweight.refresh.inventory;

import fineweight.clue.word.Word;
import fineweight.column.Appraisal;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A row of the inventory as read. Immutable.
 *
 * @param row from 0
 * @param appraisal what was found out; null if the row is no coin (a total, a heading)
 * @param key the number of the piece, empty if it has none yet
 * @param money cost and lot
 */
public record ReadRow(int row, Appraisal appraisal, String key, RowMoney money) {
  public static ReadRow notACoin(int row) {
    return new ReadRow(row, null, "", RowMoney.NONE);
  }

  public boolean isCoin() {
    return appraisal != null;
  }

  /** The row's own words, shortened. */
  public String words() {
    return appraisal.clues().wording().passages().stream()
        .flatMap(List::stream)
        .map(Word::raw)
        .limit(14)
        .collect(Collectors.joining(" "));
  }
}
