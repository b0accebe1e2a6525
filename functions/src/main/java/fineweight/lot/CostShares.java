package fineweight.lot;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.money.LargestRemainder;
import fineweight.quantity.Decimals;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/**
 * The cost of a lot shared over its rows. The shares add up to the cost exactly and none is
 * negative; cents left over go by largest remainder, ties to the earlier row. Sharing by relative
 * worth is what accounting texts call the relative sales value method for joint costs. Immutable.
 *
 * @param shares one for each row, in their order
 * @param way how the cost was shared in the end
 * @param sentence the way in words, and why it is another than asked for
 */
public record CostShares(List<Money> shares, Way way, String sentence) {
  /** How a cost is shared. */
  public enum Way {
    BY_WORTH,
    EQUALLY,
    BY_FINE_WEIGHT
  }

  public CostShares {
    shares = List.copyOf(shares);
    Objects.requireNonNull(way, "way");
    Objects.requireNonNull(sentence, "sentence");
  }

  /**
   * By relative worth; equally where nothing in the lot is worth anything.
   *
   * @param cost zero or more
   * @param worths the worth of each row, zero or more
   * @param counts the pieces of each row, one or more, used where all worths are zero
   * @throws IllegalArgumentException if an amount is negative, the lists differ in length, or there
   *     is no row
   */
  public static CostShares byWorth(Money cost, List<BigMoney> worths, List<Integer> counts) {
    requireSameLength(worths, counts);
    if (worths.stream().allMatch(BigMoney::isZero)) {
      return new CostShares(
          equalShares(cost, counts),
          Way.EQUALLY,
          "shared equally by piece, because nothing in the lot has a worth yet");
    }
    List<BigDecimal> weights = worths.stream().map(BigMoney::getAmount).toList();
    return new CostShares(
        LargestRemainder.split(cost, weights), Way.BY_WORTH, "shared by relative worth");
  }

  /**
   * The same for every piece, up to one cent.
   *
   * @param cost zero or more
   * @param counts the pieces of each row, one or more
   * @throws IllegalArgumentException if the cost is negative or there is no row
   */
  public static CostShares equally(Money cost, List<Integer> counts) {
    return new CostShares(equalShares(cost, counts), Way.EQUALLY, "shared equally by piece");
  }

  /**
   * By the fine mass of the precious metals; equally where there is none. Meant for lots of one
   * metal: a gram of gold and a gram of silver count the same here, and the sentence says so.
   *
   * @param cost zero or more
   * @param contents the metal of each row
   * @param counts the pieces of each row, one or more, used where there is no precious metal
   * @throws IllegalArgumentException if the cost is negative, the lists differ in length, or there
   *     is no row
   */
  public static CostShares byFineWeight(
      Money cost, List<FineContent> contents, List<Integer> counts) {
    requireSameLength(contents, counts);
    Set<Metal> metals = EnumSet.noneOf(Metal.class);
    contents.forEach(
        content ->
            content.masses().keySet().stream().filter(Metal::isPrecious).forEach(metals::add));
    if (metals.isEmpty()) {
      return new CostShares(
          equalShares(cost, counts),
          Way.EQUALLY,
          "shared equally by piece, because no row holds a precious metal");
    }
    List<BigDecimal> weights = contents.stream().map(CostShares::preciousGrams).toList();
    return new CostShares(
        LargestRemainder.split(cost, weights),
        Way.BY_FINE_WEIGHT,
        metals.size() == 1
            ? "shared by fine weight"
            : "shared by fine weight, a gram of each precious metal counted alike; by worth is"
                + " fairer here");
  }

  private static BigDecimal preciousGrams(FineContent content) {
    BigDecimal sum = BigDecimal.ZERO;
    for (Metal metal : content.masses().keySet()) {
      if (metal.isPrecious()) {
        sum = sum.add(content.of(metal).grams());
      }
    }
    return Decimals.normal(sum);
  }

  private static List<Money> equalShares(Money cost, List<Integer> counts) {
    for (int count : counts) {
      if (count < 1) {
        throw new IllegalArgumentException("the count of a row is one or more, not " + count);
      }
    }
    return LargestRemainder.split(cost, counts.stream().map(BigDecimal::valueOf).toList());
  }

  private static void requireSameLength(List<?> rows, List<Integer> counts) {
    if (rows.size() != counts.size()) {
      throw new IllegalArgumentException(
          rows.size() + " rows, but " + counts.size() + " counts of pieces");
    }
  }
}
