package fineweight.valuation;

import fineweight.metal.Metal;
import fineweight.quantity.Decimals;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * The worth of one row as a function of spot: the higher of a fixed floor (own price or face) and
 * the sum over its metals of what a buyer pays. It is piecewise linear, convex, and never falls as
 * spot rises. Amounts are in the currency of the spot prices it was made with. Immutable.
 *
 * @param floor what it is worth at any spot, zero or more
 * @param terms one for each priced metal; none where the collector's own price rules
 */
public record WorthCurve(BigDecimal floor, List<Term> terms) {
  /**
   * One metal's part: {@code paid x factor + added}, at least zero, where the factor is 1 at the
   * spot price the curve was made with.
   *
   * @param paid the share of melt that is paid, zero or more
   * @param added what is paid beside it, of either sign
   */
  public record Term(Metal metal, BigDecimal paid, BigDecimal added) {
    public Term {
      Objects.requireNonNull(metal, "metal");
      paid = Decimals.normal(paid);
      added = Decimals.normal(added);
      if (paid.signum() < 0) {
        throw new IllegalArgumentException("paid is zero or more, not " + paid);
      }
    }

    BigDecimal at(BigDecimal factor) {
      return paid.multiply(factor).add(added).max(BigDecimal.ZERO);
    }
  }

  public WorthCurve {
    floor = Decimals.normal(floor);
    terms = List.copyOf(terms);
    if (floor.signum() < 0) {
      throw new IllegalArgumentException("the floor is zero or more, not " + floor);
    }
  }

  /** What a buyer pays for the metals when those of {@code moving} stand at factor x spot. */
  public BigDecimal metalAt(BigDecimal factor, Set<Metal> moving) {
    BigDecimal sum = BigDecimal.ZERO;
    for (Term term : terms) {
      sum = sum.add(term.at(moving.contains(term.metal()) ? factor : BigDecimal.ONE));
    }
    return sum;
  }

  /** The worth when the spot prices of {@code moving} stand at factor x what they are. */
  public BigDecimal at(BigDecimal factor, Set<Metal> moving) {
    return floor.max(metalAt(factor, moving));
  }

  /**
   * The factors above zero at which the curve changes its slope, to 34 significant digits, not
   * sorted.
   */
  public List<BigDecimal> bends(Set<Metal> moving) {
    List<BigDecimal> starts = new ArrayList<>();
    for (Term term : terms) {
      if (moving.contains(term.metal()) && term.paid().signum() > 0 && term.added().signum() < 0) {
        starts.add(term.added().negate().divide(term.paid(), Decimals.DIVISION));
      }
    }
    List<BigDecimal> bends = new ArrayList<>(starts);
    starts.add(BigDecimal.ZERO);
    starts.sort(null);
    for (int i = 0; i < starts.size(); i++) {
      boolean last = i + 1 == starts.size();
      BigDecimal from = starts.get(i);
      BigDecimal to = last ? from.add(BigDecimal.ONE) : starts.get(i + 1);
      BigDecimal crossing = crossing(from, to, moving);
      if (crossing != null && (last || crossing.compareTo(to) <= 0)) {
        bends.add(crossing);
        break;
      }
    }
    return bends;
  }

  /**
   * Where the metal overtakes the floor on the line through two factors; null if it is above
   * already or does not rise.
   */
  private BigDecimal crossing(BigDecimal from, BigDecimal to, Set<Metal> moving) {
    BigDecimal start = metalAt(from, moving);
    BigDecimal rise = metalAt(to, moving).subtract(start);
    BigDecimal missing = floor.subtract(start);
    return missing.signum() <= 0 || rise.signum() == 0
        ? null
        : from.add(missing.multiply(to.subtract(from)).divide(rise, Decimals.DIVISION));
  }
}
