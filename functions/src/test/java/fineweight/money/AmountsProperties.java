package fineweight.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Scale;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

class AmountsProperties {
  @Property
  void theCellLiesWithinHalfACentAndOnlyMovesATieUp(
      @ForAll @BigRange(min = "0", max = "100000") @Scale(5) BigDecimal amount) {
    Money cell = Amounts.atCell(BigMoney.of(CurrencyUnit.USD, amount));
    BigDecimal moved = cell.getAmount().subtract(amount);
    assertThat(moved).isGreaterThan(new BigDecimal("-0.005"));
    assertThat(moved).isLessThanOrEqualTo(new BigDecimal("0.005"));
  }

  @Property
  void whatIsInCentsAlreadyIsNotMoved(
      @ForAll @LongRange(min = -1_000_000, max = 1_000_000) long cents) {
    Money money = Money.ofMinor(CurrencyUnit.USD, cents);
    assertThat(Amounts.atCell(money.toBigMoney())).isEqualTo(money);
  }

  @Property
  void aPercentageAndTheRestMakeTheWhole(
      @ForAll @BigRange(min = "0", max = "100000") @Scale(2) BigDecimal amount,
      @ForAll @BigRange(min = "0", max = "100") @Scale(4) BigDecimal percent) {
    BigMoney whole = BigMoney.of(CurrencyUnit.USD, amount);
    BigMoney part = Amounts.percentOf(whole, percent);
    BigMoney rest = Amounts.percentOf(whole, new BigDecimal("100").subtract(percent));
    assertThat(part.plus(rest).isEqual(whole)).isTrue();
  }

  @Property
  void equalAmountsOfAnyScaleAreEqualObjects(
      @ForAll @BigRange(min = "-1000", max = "1000") @Scale(3) BigDecimal amount,
      @ForAll @LongRange(min = 0, max = 12) long zeros) {
    BigMoney plain = BigMoney.of(CurrencyUnit.USD, amount);
    BigMoney longer = BigMoney.of(CurrencyUnit.USD, amount.setScale(amount.scale() + (int) zeros));
    assertThat(Amounts.normal(longer)).isEqualTo(Amounts.normal(plain));
    assertThat(Amounts.normal(longer).hashCode()).isEqualTo(Amounts.normal(plain).hashCode());
  }

  @Property
  void gainAndCostMakeTheWorth(
      @ForAll @LongRange(min = 0, max = 1_000_000) long worth,
      @ForAll @LongRange(min = 0, max = 1_000_000) long cost) {
    Gain gain =
        Gain.of(Money.ofMinor(CurrencyUnit.USD, worth), Money.ofMinor(CurrencyUnit.USD, cost));
    assertThat(gain.money().plusMinor(cost).getAmountMinorLong()).isEqualTo(worth);
    assertThat(gain.percentOfCost().isPresent()).isEqualTo(cost > 0);
    gain.percentOfCost()
        .ifPresent(percent -> assertThat(percent.signum()).isEqualTo(Long.compare(worth, cost)));
  }
}
