package fineweight.refresh.worth;

import fineweight.column.Appraisal;
import fineweight.column.MeltFormula;
import fineweight.column.RowState;
import fineweight.metal.FineContent;
import fineweight.refresh.inventory.ReadRow;
import fineweight.valuation.Worth;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Sums over rows: pieces, metal, melt at least and at most, cost by currency. Filled row by row.
 */
public final class Totals {
  private final Worths worths;
  private final MeltFormula melt;
  private final Map<RowState, Integer> states = new EnumMap<>(RowState.class);
  private final Map<String, BigDecimal> costs = new TreeMap<>();
  private final String currency;
  private int rows;
  private long pieces;
  private int withoutPrice;
  private int withoutCost;
  private FineContent content = FineContent.NONE;
  private BigDecimal least = BigDecimal.ZERO;
  private BigDecimal most = BigDecimal.ZERO;
  private BigDecimal worth = BigDecimal.ZERO;
  private BigDecimal mostWorth = BigDecimal.ZERO;
  private BigDecimal fromMemory = BigDecimal.ZERO;

  /** A cost without a currency is taken to be in that of the prices. */
  public Totals(Worths worths) {
    this.worths = worths;
    this.melt = worths.melt();
    this.currency = worths.currency().getCode();
  }

  public void add(ReadRow row) {
    Appraisal appraisal = row.appraisal();
    rows++;
    pieces += appraisal.pieces().orElse(0L);
    states.merge(appraisal.state(), 1, Integer::sum);
    content = content.plus(appraisal.content());
    BigDecimal low = melt.result(appraisal.content()).orElse(BigDecimal.ZERO);
    boolean unpriced =
        appraisal.content().hasPrecious() && melt.result(appraisal.content()).isEmpty();
    withoutPrice += unpriced ? 1 : 0;
    least = least.add(low);
    most =
        most.add(
            appraisal.state() == RowState.SEVERAL
                ? melt.result(appraisal.mostContent()).orElse(low).max(low)
                : low);
    BigDecimal lowWorth = amount(worths.of(row));
    worth = worth.add(lowWorth);
    mostWorth =
        mostWorth.add(
            appraisal.state() == RowState.SEVERAL
                ? amount(Optional.of(worths.range(row).high().worth())).max(lowWorth)
                : lowWorth);
    if (appraisal.figures().fromMemory()) {
      fromMemory = fromMemory.add(low);
    }
    if (row.money().cost().isPresent()) {
      String code = row.money().currency().isEmpty() ? currency : row.money().currency();
      costs.merge(code, row.money().cost().get(), BigDecimal::add);
    } else {
      withoutCost++;
    }
  }

  private static BigDecimal amount(Optional<Worth> worth) {
    return worth.map(found -> found.atCell().getAmount()).orElse(BigDecimal.ZERO);
  }

  /** Adds what others have added up. */
  void add(Totals other) {
    rows += other.rows;
    pieces += other.pieces;
    other.states.forEach((state, count) -> states.merge(state, count, Integer::sum));
    content = content.plus(other.content);
    withoutPrice += other.withoutPrice;
    least = least.add(other.least);
    most = most.add(other.most);
    worth = worth.add(other.worth);
    mostWorth = mostWorth.add(other.mostWorth);
    fromMemory = fromMemory.add(other.fromMemory);
    withoutCost += other.withoutCost;
    other.costs.forEach((code, cost) -> costs.merge(code, cost, BigDecimal::add));
  }

  public int rows() {
    return rows;
  }

  public long pieces() {
    return pieces;
  }

  public int count(RowState state) {
    return states.getOrDefault(state, 0);
  }

  public FineContent content() {
    return content;
  }

  /** The sum of the rows' melt, each rounded as in its cell. */
  public BigDecimal least() {
    return least;
  }

  public BigDecimal most() {
    return most;
  }

  /** The sum of the rows' worth as their cells show it, open rows at their lowest. */
  public BigDecimal worth() {
    return worth;
  }

  /** The same with open rows at their highest. */
  public BigDecimal mostWorth() {
    return mostWorth;
  }

  /** How many rows wait for a person. */
  public int open() {
    return count(RowState.SEVERAL) + count(RowState.NOT_KNOWN);
  }

  /** The part of {@link #least} that rests on standards from memory. */
  public BigDecimal fromMemory() {
    return fromMemory;
  }

  public int withoutPrice() {
    return withoutPrice;
  }

  public int withoutCost() {
    return withoutCost;
  }

  /** Cost by currency. */
  public Map<String, BigDecimal> costs() {
    return costs;
  }
}
