package fineweight.lot;

import fineweight.metal.Metal;
import fineweight.money.Amounts;
import fineweight.quantity.Decimals;
import fineweight.spot.SpotPrice;
import fineweight.valuation.WorthCurve;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.joda.money.Money;

/**
 * The spot at which a lot is worth just what it cost. The worth of a lot is piecewise linear in
 * spot, because each row is the higher of its metal and a floor; so the piece of the curve that
 * meets the cost is found first and the straight line solved there, without trial and error.
 * Immutable.
 *
 * @param factor on the spot prices that move, to 30 significant digits; empty where no spot does it
 * @param spot the same as a price, where one metal moves and there is a factor
 * @param sentence the answer in words
 */
public record BreakEven(Optional<BigDecimal> factor, Optional<SpotPrice> spot, String sentence) {
  /**
   * Four digits fewer than the divisions carry, so that 25 does not come out as 24.99 and so on.
   */
  private static final MathContext ANSWER = new MathContext(30, RoundingMode.HALF_EVEN);

  public BreakEven {
    Objects.requireNonNull(factor, "factor");
    Objects.requireNonNull(spot, "spot");
    Objects.requireNonNull(sentence, "sentence");
  }

  /**
   * For one metal, the others staying where they are.
   *
   * @param cost of the lot
   * @param rows the curve of each row, made with the spot prices of the day
   * @param today the spot price of the metal they were made with
   */
  public static BreakEven ofMetal(Money cost, List<WorthCurve> rows, SpotPrice today) {
    Solution solution = solve(cost, rows, EnumSet.of(today.metal()));
    if (solution.factor() == null) {
      return new BreakEven(Optional.empty(), Optional.empty(), solution.reason());
    }
    SpotPrice spot =
        new SpotPrice(
            today.metal(),
            rounded(today.amount().multiply(solution.factor())),
            today.currency(),
            today.unit());
    return new BreakEven(
        Optional.of(rounded(solution.factor())),
        Optional.of(spot),
        "the lot is worth its cost of "
            + Amounts.words(cost)
            + " with "
            + today.metal().word()
            + " at "
            + spot.amount().setScale(2, RoundingMode.HALF_UP).toPlainString()
            + " "
            + today.currency()
            + " per "
            + today.unit().symbol());
  }

  /**
   * For all metals together, each at the same factor of what it is.
   *
   * @param cost of the lot
   * @param rows the curve of each row, made with the spot prices of the day
   */
  public static BreakEven ofAllMetals(Money cost, List<WorthCurve> rows) {
    Solution solution = solve(cost, rows, EnumSet.allOf(Metal.class));
    if (solution.factor() == null) {
      return new BreakEven(Optional.empty(), Optional.empty(), solution.reason());
    }
    BigDecimal percent = solution.factor().movePointRight(2).setScale(2, RoundingMode.HALF_UP);
    return new BreakEven(
        Optional.of(rounded(solution.factor())),
        Optional.empty(),
        "the lot is worth its cost of "
            + Amounts.words(cost)
            + " with all metals at "
            + percent.toPlainString()
            + " % of today's spot");
  }

  private static BigDecimal rounded(BigDecimal value) {
    return Decimals.normal(value.round(ANSWER));
  }

  private record Solution(BigDecimal factor, String reason) {}

  private static Solution solve(Money cost, List<WorthCurve> rows, Set<Metal> moving) {
    BigDecimal target = cost.getAmount();
    List<BigDecimal> bends = bends(rows, moving);
    if (worthAt(BigDecimal.ZERO, rows, moving).compareTo(target) >= 0) {
      return new Solution(
          null, "the lot is worth its cost of " + Amounts.words(cost) + " at any spot");
    }
    int above = firstAtOrAbove(target, bends, rows, moving);
    BigDecimal from = bends.get(above - 1);
    BigDecimal to = above < bends.size() ? bends.get(above) : from.add(BigDecimal.ONE);
    BigDecimal start = worthAt(from, rows, moving);
    BigDecimal rise = worthAt(to, rows, moving).subtract(start);
    if (rise.signum() == 0) {
      return new Solution(
          null,
          "no spot makes the lot worth its cost of "
              + Amounts.words(cost)
              + ": at most "
              + start.setScale(2, RoundingMode.HALF_UP).toPlainString()
              + ", whatever the metal");
    }
    BigDecimal step =
        target.subtract(start).multiply(to.subtract(from)).divide(rise, Decimals.DIVISION);
    return new Solution(from.add(step), "");
  }

  /** All bends of all rows, ascending, after zero. */
  private static List<BigDecimal> bends(List<WorthCurve> rows, Set<Metal> moving) {
    TreeSet<BigDecimal> bends = new TreeSet<>();
    bends.add(BigDecimal.ZERO);
    rows.forEach(row -> bends.addAll(row.bends(moving)));
    return new ArrayList<>(bends);
  }

  /** The index of the first bend where the worth reaches the target; the size if none does. */
  private static int firstAtOrAbove(
      BigDecimal target, List<BigDecimal> bends, List<WorthCurve> rows, Set<Metal> moving) {
    int low = 1;
    int high = bends.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (worthAt(bends.get(middle), rows, moving).compareTo(target) >= 0) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  private static BigDecimal worthAt(BigDecimal factor, List<WorthCurve> rows, Set<Metal> moving) {
    BigDecimal sum = BigDecimal.ZERO;
    for (WorthCurve row : rows) {
      sum = sum.add(row.at(factor, moving));
    }
    return sum;
  }
}
