package fineweight.valuation;

import java.util.List;

/**
 * The valuations that a row leaves open, reduced to the lowest and the highest worth; both are the
 * same where nothing is open. Immutable.
 *
 * @param low the one to show
 * @param high the most it may be
 * @param open whether the row waits for an answer, even where the worth would be the same
 */
public record WorthRange(Valuation low, Valuation high, boolean open) {
  /**
   * @throws IllegalArgumentException if the high worth is below the low one
   */
  public WorthRange {
    if (high.worth().money().isLessThan(low.worth().money())) {
      throw new IllegalArgumentException("the high worth lies below the low one");
    }
  }

  public static WorthRange settled(Valuation only) {
    return new WorthRange(only, only, false);
  }

  /**
   * The range of several valuations of one row.
   *
   * @param candidates at least one; two or more leave the row open
   * @throws IllegalArgumentException if there is no candidate
   */
  public static WorthRange among(List<Valuation> candidates) {
    if (candidates.isEmpty()) {
      throw new IllegalArgumentException("a range needs at least one candidate");
    }
    Valuation low = candidates.get(0);
    Valuation high = candidates.get(0);
    for (Valuation candidate : candidates) {
      if (candidate.worth().money().isLessThan(low.worth().money())) {
        low = candidate;
      }
      if (candidate.worth().money().isGreaterThan(high.worth().money())) {
        high = candidate;
      }
    }
    return new WorthRange(low, high, candidates.size() > 1);
  }
}
