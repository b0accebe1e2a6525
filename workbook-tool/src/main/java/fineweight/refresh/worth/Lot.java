package fineweight.refresh.worth;

import fineweight.lot.CostShares;
import fineweight.lot.RunningTotal;
import fineweight.lot.WrittenCost;
import fineweight.money.Amounts;
import fineweight.refresh.inventory.ReadRow;
import fineweight.valuation.WorthCurve;
import fineweight.valuation.WorthRange;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * The rows that were bought together. Immutable.
 *
 * @param name as its owner writes it; empty for the rows that belong to no lot
 * @param rows in the order of the sheet, which is taken for the order in which they were opened
 * @param totals sums over what is still there
 * @param currency of the prices
 * @param cost what the figures beside the rows say; empty where they are in another currency than
 *     the prices
 */
public record Lot(
    String name, List<Row> rows, Totals totals, CurrencyUnit currency, Optional<WrittenCost> cost) {
  /**
   * One row of a lot.
   *
   * @param rest what the pieces that are still there are worth; empty if none is
   * @param received what came in, after fees, for those that are gone
   */
  public record Row(ReadRow read, Optional<WorthRange> rest, Money received) {
    /** What is there and what came in, as their cells show it. */
    Money worth() {
      return rest.map(range -> received.plus(range.low().worth().atCell())).orElse(received);
    }

    private Money mostWorth() {
      return rest.map(range -> received.plus(range.high().worth().atCell())).orElse(received);
    }

    private Stream<WorthCurve> curves() {
      WorthCurve settled = new WorthCurve(received.getAmount(), List.of());
      return Stream.concat(
          Stream.of(settled).filter(curve -> curve.floor().signum() > 0),
          rest.stream().map(range -> range.low().curve()));
    }

    private int pieces() {
      return (int) Math.max(1, Math.min(read.appraisal().pieces().orElse(1L), 1_000_000_000L));
    }
  }

  public Lot {
    rows = List.copyOf(rows);
  }

  public boolean isNamed() {
    return !name.isEmpty();
  }

  /** The cost to reckon with: the lower reading where the figures allow two. */
  public Optional<Money> reckonedCost() {
    return cost.flatMap(
        written ->
            written instanceof WrittenCost.Known known
                ? Optional.of(known.cost())
                : written instanceof WrittenCost.Asks asks
                    ? Optional.of(asks.least())
                    : Optional.empty());
  }

  /** Worth with the lowest figure of every open row. */
  public Money least() {
    return sum(rows.stream().map(Row::worth).toList());
  }

  /** Worth with the highest figure of every open row. */
  public Money most() {
    return sum(rows.stream().map(Row::mostWorth).toList());
  }

  private Money sum(List<Money> amounts) {
    return amounts.isEmpty() ? Money.zero(currency) : Money.total(amounts);
  }

  /** What came in for pieces that are gone. */
  public Money received() {
    return sum(rows.stream().map(Row::received).toList());
  }

  /** How many rows wait for a person. */
  public int open() {
    return (int) rows.stream().flatMap(row -> row.rest().stream()).filter(WorthRange::open).count();
  }

  /** The worth added up row by row; empty without a cost. */
  public Optional<RunningTotal> running() {
    return reckonedCost()
        .map(known -> RunningTotal.of(known, rows.stream().map(Row::worth).toList()));
  }

  /** The worth of each row at other prices. */
  public List<WorthCurve> curves() {
    return rows.stream().flatMap(Row::curves).toList();
  }

  /** Whether the cost is one figure for several rows, which then each carry a share of it. */
  public boolean hasCostToShare() {
    return isNamed()
        && rows.size() > 1
        && cost.filter(written -> written instanceof WrittenCost.Known known && isForAll(known))
            .isPresent();
  }

  private boolean isForAll(WrittenCost.Known known) {
    List<BigDecimal> written =
        rows.stream().map(row -> row.read().money().cost()).flatMap(Optional::stream).toList();
    boolean rowByRow =
        written.size() == rows.size()
            && written.stream()
                    .reduce(BigDecimal.ZERO, BigDecimal::add)
                    .compareTo(known.cost().getAmount())
                == 0;
    return known.place() != WrittenCost.Place.EACH_ROW && !rowByRow;
  }

  /**
   * What each row carries of the cost: by relative worth where it is one figure, adding up to it;
   * else each row's own. Empty where the cost is open or not known.
   */
  public List<Optional<Money>> shares() {
    if (cost.isEmpty() || !(cost.get() instanceof WrittenCost.Known known)) {
      return rows.stream().map(row -> Optional.<Money>empty()).toList();
    }
    if (!hasCostToShare()) {
      return rows.stream().map(row -> row.read().money().cost().map(this::atCell)).toList();
    }
    return shared(known.cost());
  }

  /**
   * Pieces that are gone keep the share they went with; the rest is shared over the other rows, so
   * that a gain once realised does not move with the prices.
   */
  private List<Optional<Money>> shared(Money whole) {
    List<Optional<Money>> fixed = rows.stream().map(this::fixedShare).toList();
    Money settled = sum(fixed.stream().flatMap(Optional::stream).toList());
    boolean fits = !settled.isGreaterThan(whole) && fixed.stream().anyMatch(Optional::isEmpty);
    List<Row> sharing = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      if (!fits || fixed.get(i).isEmpty()) {
        sharing.add(rows.get(i));
      }
    }
    Iterator<Money> shares =
        CostShares.byWorth(
                fits ? whole.minus(settled) : whole,
                sharing.stream().map(row -> row.worth().toBigMoney()).toList(),
                sharing.stream().map(Row::pieces).toList())
            .shares()
            .iterator();
    List<Optional<Money>> all = new ArrayList<>();
    for (Optional<Money> share : fixed) {
      all.add(fits && share.isPresent() ? share : Optional.of(shares.next()));
    }
    return all;
  }

  private Optional<Money> fixedShare(Row row) {
    return row.read().gonePieces() > 0 ? row.read().share().map(this::atCell) : Optional.empty();
  }

  private Money atCell(BigDecimal amount) {
    return Amounts.atCell(BigMoney.of(currency, amount));
  }
}
