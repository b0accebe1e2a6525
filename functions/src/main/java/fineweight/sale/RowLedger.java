package fineweight.sale;

import fineweight.money.Amounts;
import fineweight.money.Gain;
import fineweight.quantity.Decimals;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/**
 * What became of the pieces of one row, part by part, in the order it happened. The row's cost goes
 * with its pieces: the first k of n pieces carry cost x k / n, rounded half up to the cent, so that
 * a part recorded later never changes the cost of an earlier one and all parts add up to the row's
 * cost. Immutable.
 *
 * @param key the row's key
 * @param pieces how many the row had, one or more
 * @param cost of all of them, zero or more
 * @param parts sold, kept, returned or traded, in order; what they leave is unsold
 */
public record RowLedger(String key, int pieces, Money cost, List<Part> parts) {
  /**
   * Some pieces of the row with one fate.
   *
   * @param state any but unsold
   * @param pieces one or more
   * @param date the day; needed unless kept
   * @param received what came in for all of them, after fees: the net of the sale, the refund, or
   *     the agreed value of the trade; needed unless kept
   */
  public record Part(
      SaleState state, int pieces, Optional<LocalDate> date, Optional<Money> received) {
    /**
     * @throws IllegalArgumentException if the part has no pieces, is unsold, or lacks its date or
     *     what was received
     */
    public Part {
      Objects.requireNonNull(state, "state");
      if (pieces < 1) {
        throw new IllegalArgumentException("a part has one piece or more, not " + pieces);
      }
      if (state == SaleState.UNSOLD) {
        throw new IllegalArgumentException("unsold is what the other parts leave");
      }
      if (state.isGone() && (date.isEmpty() || received.isEmpty())) {
        throw new IllegalArgumentException(
            "a piece that was " + state.word() + " needs its date and what was received");
      }
    }

    public static Part sold(int pieces, LocalDate date, Money net) {
      return new Part(SaleState.SOLD, pieces, Optional.of(date), Optional.of(net));
    }

    public static Part kept(int pieces) {
      return new Part(SaleState.KEPT, pieces, Optional.empty(), Optional.empty());
    }

    public static Part returned(int pieces, LocalDate date, Money refund) {
      return new Part(SaleState.RETURNED, pieces, Optional.of(date), Optional.of(refund));
    }

    public static Part traded(int pieces, LocalDate date, Money value) {
      return new Part(SaleState.TRADED, pieces, Optional.of(date), Optional.of(value));
    }
  }

  /**
   * @throws IllegalArgumentException if the parts have more pieces than the row, or a figure is out
   *     of range
   */
  public RowLedger {
    Objects.requireNonNull(key, "key");
    parts = List.copyOf(parts);
    if (pieces < 1 || cost.isNegative()) {
      throw new IllegalArgumentException(
          "a row has one piece or more and a cost of zero or more: " + pieces + ", " + cost);
    }
    int used = parts.stream().mapToInt(Part::pieces).sum();
    if (used > pieces) {
      throw new IllegalArgumentException(
          "row " + key + " has " + pieces + " pieces, but " + used + " are accounted for");
    }
  }

  /** A row of which nothing has gone yet. */
  public static RowLedger untouched(String key, int pieces, Money cost) {
    return new RowLedger(key, pieces, cost, List.of());
  }

  /** This row with one more part. */
  public RowLedger with(Part part) {
    List<Part> more = new ArrayList<>(parts);
    more.add(part);
    return new RowLedger(key, pieces, cost, more);
  }

  /** How many pieces are in a state. */
  public int pieces(SaleState state) {
    int counted = parts.stream().filter(part -> part.state() == state).mapToInt(Part::pieces).sum();
    return state == SaleState.UNSOLD ? pieces - accountedFor() : counted;
  }

  private int accountedFor() {
    return parts.stream().mapToInt(Part::pieces).sum();
  }

  /** The share of the row's cost that the pieces of a state carry. */
  public Money cost(SaleState state) {
    Money sum = Money.zero(cost.getCurrencyUnit());
    int from = 0;
    for (Part part : parts) {
      if (part.state() == state) {
        sum = sum.plus(costBetween(from, from + part.pieces()));
      }
      from += part.pieces();
    }
    return state == SaleState.UNSOLD ? costBetween(from, pieces) : sum;
  }

  private Money costBetween(int from, int to) {
    return costOfFirst(to).minus(costOfFirst(from));
  }

  private Money costOfFirst(int count) {
    BigDecimal share =
        cost.getAmount()
            .multiply(BigDecimal.valueOf(count))
            .divide(BigDecimal.valueOf(pieces), Decimals.DIVISION);
    return Amounts.atCell(BigMoney.of(cost.getCurrencyUnit(), share));
  }

  /** The gains of the parts that are gone, in their order. */
  public List<RealisedGain> gains() {
    List<RealisedGain> gains = new ArrayList<>();
    int from = 0;
    for (Part part : parts) {
      if (part.state().isGone()) {
        Money carried = costBetween(from, from + part.pieces());
        Money received = part.received().orElseThrow();
        gains.add(
            new RealisedGain(
                key,
                part.state(),
                part.date().orElseThrow(),
                part.pieces(),
                received,
                carried,
                Gain.of(received, carried)));
      }
      from += part.pieces();
    }
    return gains;
  }
}
