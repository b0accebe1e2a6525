package fineweight.refresh.collection;

import fineweight.money.Amounts;
import fineweight.quantity.Decimals;
import fineweight.refresh.inventory.Fate;
import fineweight.refresh.inventory.PieceNumbers;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.worth.Lots;
import fineweight.refresh.worth.Worths;
import fineweight.sale.LeastPrice;
import fineweight.typeset.Standing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/** What is for sale: marked so by its owner, or proposed by the type set and not overruled. */
public final class ForSale {
  private final List<Offer> offers = new ArrayList<>();
  private final Map<Integer, Offer> byRow = new HashMap<>();

  /**
   * Some pieces of a row that are for sale.
   *
   * @param row with as many pieces as are for sale
   * @param number of the piece
   * @param cost of those pieces; empty if it is not known
   * @param least the least price for all of them in one sale; empty without cost or terms, or where
   *     no price earns what is wanted
   * @param floor their melt; empty where it is not known
   */
  public record Offer(
      ReadRow row,
      String number,
      Optional<Money> cost,
      Optional<LeastPrice> least,
      Optional<BigDecimal> floor) {}

  /**
   * @param held the rows with the pieces that are still in the collection
   * @param set the type set, if there is one
   * @param terms of selling, if they are known
   */
  public ForSale(
      List<ReadRow> held,
      Optional<TypeSetReview> set,
      Lots lots,
      Worths worths,
      PieceNumbers numbers,
      Optional<SellingTerms> terms) {
    for (ReadRow row : held) {
      long pieces = pieces(row, set);
      if (pieces > 0) {
        ReadRow offered = row.appraisal().pieces().isEmpty() ? row : row.withPieces(pieces);
        Optional<Money> cost = lots.share(row.row()).map(share -> part(share, pieces, row));
        Offer offer =
            new Offer(
                offered,
                numbers.of(row.row()),
                cost,
                terms.flatMap(t -> cost.flatMap(c -> t.fees().leastPrice(c, t.wanted()))),
                worths.melt().result(offered.appraisal().content()));
        offers.add(offer);
        byRow.put(row.row(), offer);
      }
    }
  }

  private static long pieces(ReadRow row, Optional<TypeSetReview> set) {
    long all = row.appraisal().pieces().orElse(1L);
    if (row.fate().offered().isPresent()) {
      return Math.min(all, row.fate().offered().getAsInt());
    }
    boolean decided = row.fate().kind() == Fate.Kind.KEEP;
    return decided
        ? 0
        : set.flatMap(review -> review.standing(row.row())).map(Standing::sell).orElse(0);
  }

  /** What the pieces of a row that are still there carry of the cost. */
  static Optional<Money> cost(Lots lots, ReadRow held) {
    long pieces = held.appraisal().pieces().orElse(1L);
    return lots.share(held.row()).map(share -> part(share, pieces, held));
  }

  /** The row's cost goes with its pieces, those gone before included. */
  static Money part(Money share, long pieces, ReadRow held) {
    int gone = held.fate().kind().isGone() ? held.fate().pieces().orElse(0) : 0;
    long all = held.appraisal().pieces().orElse(1L) + gone;
    BigDecimal part =
        share
            .getAmount()
            .multiply(BigDecimal.valueOf(pieces))
            .divide(BigDecimal.valueOf(all), Decimals.DIVISION);
    return Amounts.atCell(BigMoney.of(share.getCurrencyUnit(), part));
  }

  /** In the order of the sheet. */
  public List<Offer> offers() {
    return List.copyOf(offers);
  }

  /** What is for sale of a row, from 0. */
  public Optional<Offer> of(int row) {
    return Optional.ofNullable(byRow.get(row));
  }
}
