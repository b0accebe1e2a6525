package fineweight.money;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.joda.money.Money;

/**
 * Splits an amount by weights so that the parts add up to it exactly: every part first gets its
 * share rounded down to the smallest unit; the units left over go, one each, to the largest
 * remainders, ties to the earlier part (Hamilton's method of apportionment).
 */
public final class LargestRemainder {
  private LargestRemainder() {}

  /**
   * Splits an amount.
   *
   * @param amount zero or positive
   * @param weights zero or positive, at least one of them positive; fractions are exact
   * @return one part for each weight, none negative, adding up to the amount
   * @throws IllegalArgumentException if the amount or a weight is negative, or no weight is
   *     positive
   */
  public static List<Money> split(Money amount, List<BigDecimal> weights) {
    if (Objects.requireNonNull(amount, "amount").isNegative()) {
      throw new IllegalArgumentException("the amount to split is negative: " + amount);
    }
    List<BigInteger> whole = wholeNumbers(weights);
    BigInteger sum = whole.stream().reduce(BigInteger.ZERO, BigInteger::add);
    if (sum.signum() == 0) {
      throw new IllegalArgumentException("no weight is more than zero");
    }
    BigInteger units = amount.getAmountMinor().toBigIntegerExact();
    List<BigInteger> shares = new ArrayList<>();
    List<BigInteger> remainders = new ArrayList<>();
    BigInteger left = units;
    for (BigInteger weight : whole) {
      BigInteger[] share = units.multiply(weight).divideAndRemainder(sum);
      shares.add(share[0]);
      remainders.add(share[1]);
      left = left.subtract(share[0]);
    }
    handOut(left.intValueExact(), shares, remainders);
    int places = amount.getCurrencyUnit().getDecimalPlaces();
    return shares.stream()
        .map(share -> Money.of(amount.getCurrencyUnit(), new BigDecimal(share, places)))
        .toList();
  }

  /**
   * One unit each to the largest remainders; the sort is stable, so of equals the earlier gets it.
   */
  private static void handOut(int left, List<BigInteger> shares, List<BigInteger> remainders) {
    IntStream.range(0, shares.size())
        .boxed()
        .sorted(Comparator.comparing(remainders::get, Comparator.reverseOrder()))
        .limit(left)
        .forEach(i -> shares.set(i, shares.get(i).add(BigInteger.ONE)));
  }

  /** The weights brought to one scale, so that no division rounds. */
  private static List<BigInteger> wholeNumbers(List<BigDecimal> weights) {
    int scale = 0;
    for (BigDecimal weight : weights) {
      if (weight.signum() < 0) {
        throw new IllegalArgumentException("a weight is negative: " + weight.toPlainString());
      }
      scale = Math.max(scale, weight.scale());
    }
    int common = scale;
    return weights.stream().map(weight -> weight.setScale(common).unscaledValue()).toList();
  }
}
