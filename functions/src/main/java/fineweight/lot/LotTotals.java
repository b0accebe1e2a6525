package fineweight.lot;

import fineweight.metal.FineContent;
import fineweight.money.Amounts;
import fineweight.money.Gain;
import fineweight.valuation.Valuation;
import fineweight.valuation.WorthRange;
import java.util.List;
import java.util.Objects;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What a lot, or a part of it, comes to. Every sum is the sum of the figures as the cells show
 * them, so that it is also the sum of the column. Immutable.
 *
 * @param pieces how many
 * @param openRows rows that wait for an answer
 * @param cost the sum of the shares of the cost
 * @param least the sums with the lowest figure of every open row
 * @param most the sums with the highest
 */
public record LotTotals(int pieces, int openRows, Money cost, Sums least, Sums most) {
  /**
   * One row of a lot.
   *
   * @param range its valuation, or the lowest and highest of those it leaves open
   * @param cost its share of the lot's cost
   * @param kept whether it stays in the collection
   */
  public record Row(WorthRange range, Money cost, boolean kept) {
    public Row {
      Objects.requireNonNull(range, "range");
      Objects.requireNonNull(cost, "cost");
    }
  }

  /**
   * The sums over all rows.
   *
   * @param content the metals
   * @param melt at spot, no payout taken off
   * @param worth by each row's own basis
   */
  public record Sums(FineContent content, Money melt, Money worth) {
    private static Sums zero(CurrencyUnit currency) {
      return new Sums(FineContent.NONE, Money.zero(currency), Money.zero(currency));
    }

    private Sums plus(Valuation valuation) {
      return new Sums(
          content.plus(valuation.content()),
          melt.plus(Amounts.atCell(valuation.melt())),
          worth.plus(valuation.worth().atCell()));
    }
  }

  /**
   * Adds up rows.
   *
   * @param currency of every figure; needed where there is no row
   * @throws org.joda.money.CurrencyMismatchException if a row is in another currency
   */
  public static LotTotals of(CurrencyUnit currency, List<Row> rows) {
    int pieces = 0;
    int open = 0;
    Money cost = Money.zero(currency);
    Sums least = Sums.zero(currency);
    Sums most = Sums.zero(currency);
    for (Row row : rows) {
      pieces += row.range().low().piece().count();
      open += row.range().open() ? 1 : 0;
      cost = cost.plus(row.cost());
      least = least.plus(row.range().low());
      most = most.plus(row.range().high());
    }
    return new LotTotals(pieces, open, cost, least, most);
  }

  /** The totals of the rows that stay in the collection. */
  public static LotTotals ofKept(CurrencyUnit currency, List<Row> rows) {
    return of(currency, rows.stream().filter(Row::kept).toList());
  }

  /** The totals of the rows that are for sale. */
  public static LotTotals ofForSale(CurrencyUnit currency, List<Row> rows) {
    return of(currency, rows.stream().filter(row -> !row.kept()).toList());
  }

  /** Worth less cost, with the lowest figures. */
  public Gain leastGain() {
    return Gain.of(least.worth(), cost);
  }

  /** Worth less cost, with the highest figures. */
  public Gain mostGain() {
    return Gain.of(most.worth(), cost);
  }

  /** The worth in words: one figure, or {@code at least X, at most Y, N open}. */
  public String worthWords() {
    return openRows == 0
        ? Amounts.words(least.worth())
        : "at least "
            + Amounts.words(least.worth())
            + ", at most "
            + Amounts.words(most.worth())
            + ", "
            + openRows
            + " open";
  }
}
