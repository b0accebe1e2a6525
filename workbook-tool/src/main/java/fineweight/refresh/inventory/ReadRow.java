package fineweight.refresh.inventory;

import fineweight.clue.word.Word;
import fineweight.column.Appraisal;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A row of the inventory as read. Immutable.
 *
 * @param row from 0
 * @param appraisal what was found out; null if the row is no coin (a total, a heading)
 * @param key the number of the piece, empty if it has none yet
 * @param money cost and lot
 * @param fate whether it is kept, for sale or gone
 * @param share what stands in our column as its share of the lot's cost
 * @param keeping where it is kept and pictured
 */
public record ReadRow(
    int row,
    Appraisal appraisal,
    String key,
    RowMoney money,
    Fate fate,
    Optional<BigDecimal> share,
    Keeping keeping) {
  /** A row of which it is not said where it is kept. */
  public ReadRow(
      int row,
      Appraisal appraisal,
      String key,
      RowMoney money,
      Fate fate,
      Optional<BigDecimal> share) {
    this(row, appraisal, key, money, fate, share, Keeping.UNSAID);
  }

  public static ReadRow notACoin(int row) {
    return new ReadRow(row, null, "", RowMoney.NONE, Fate.UNSAID, Optional.empty());
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

  /** The same row with another number of pieces. */
  public ReadRow withPieces(long number) {
    return new ReadRow(row, appraisal.withPieces(number), key, money, fate, share, keeping);
  }

  /** How many pieces of the row have left the collection; all of them where no number is said. */
  public long gonePieces() {
    long count = appraisal.pieces().orElse(1L);
    return fate.kind().isGone() ? Math.min(fate.pieces().orElse(Integer.MAX_VALUE), count) : 0;
  }

  /** The row with the pieces that are still in the collection; empty if none is. */
  public Optional<ReadRow> held() {
    long gone = gonePieces();
    long left = appraisal.pieces().orElse(1L) - gone;
    if (gone == 0) {
      return Optional.of(this);
    }
    return left > 0 ? Optional.of(withPieces(left)) : Optional.empty();
  }
}
