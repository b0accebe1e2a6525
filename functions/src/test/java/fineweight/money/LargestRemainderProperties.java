package fineweight.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

class LargestRemainderProperties {
  @Property
  void partsAddUpAreNeverNegativeAndLieWithinACentOfTheExactShare(
      @ForAll @LongRange(min = 0, max = 10_000_000) long cents,
      @ForAll @Size(min = 1, max = 40)
          List<@BigRange(min = "0", max = "100000") @Scale(4) BigDecimal> weights) {
    BigDecimal sum = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    Assume.that(sum.signum() > 0);
    Money amount = Money.ofMinor(CurrencyUnit.USD, cents);
    List<Money> parts = LargestRemainder.split(amount, weights);

    assertThat(Money.total(parts)).isEqualTo(amount);
    for (int i = 0; i < parts.size(); i++) {
      assertThat(parts.get(i).isNegative()).isFalse();
      // |part x sum - cents x weight| < sum: less than one cent away, without a division.
      BigDecimal off =
          new BigDecimal(BigInteger.valueOf(parts.get(i).getAmountMinorLong()))
              .multiply(sum)
              .subtract(BigDecimal.valueOf(cents).multiply(weights.get(i)));
      assertThat(off.abs()).isLessThan(sum);
    }
  }

  @Property
  void aHigherWeightNeverGetsLess(
      @ForAll @LongRange(min = 0, max = 100_000) long cents,
      @ForAll @Size(min = 2, max = 12) List<@BigRange(min = "1", max = "50") BigInteger> whole) {
    List<BigDecimal> weights = whole.stream().map(BigDecimal::new).toList();
    List<Money> parts = LargestRemainder.split(Money.ofMinor(CurrencyUnit.USD, cents), weights);
    for (int i = 0; i < parts.size(); i++) {
      for (int j = 0; j < parts.size(); j++) {
        if (weights.get(i).compareTo(weights.get(j)) > 0) {
          assertThat(parts.get(i)).isGreaterThanOrEqualTo(parts.get(j));
        }
      }
    }
  }
}
