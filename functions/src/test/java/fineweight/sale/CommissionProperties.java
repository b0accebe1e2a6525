package fineweight.sale;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Scale;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

class CommissionProperties {
  private static Money cents(long cents) {
    return Money.ofMinor(CurrencyUnit.USD, cents);
  }

  private static Commission twoTiers(
      Commission.Rule rule, long end, BigDecimal first, BigDecimal second) {
    return new Commission(
        List.of(
            new Commission.Tier(Optional.of(cents(end)), first),
            new Commission.Tier(Optional.empty(), second)),
        rule,
        Optional.empty(),
        false);
  }

  @Property
  void aHigherPriceNeverPaysLessWhereEachPartHasItsTier(
      @ForAll @LongRange(min = 1, max = 100_000) long end,
      @ForAll @BigRange(min = "0", max = "100") @Scale(2) BigDecimal first,
      @ForAll @BigRange(min = "0", max = "100") @Scale(2) BigDecimal second,
      @ForAll @LongRange(min = 0, max = 200_000) long one,
      @ForAll @LongRange(min = 0, max = 200_000) long other) {
    Commission commission = twoTiers(Commission.Rule.EACH_PART, end, first, second);
    Money lower = commission.of(cents(Math.min(one, other)));
    Money higher = commission.of(cents(Math.max(one, other)));
    assertThat(lower).isLessThanOrEqualTo(higher);
    assertThat(higher).isLessThanOrEqualTo(cents(Math.max(one, other)));
  }

  @Property
  void belowItsEndTheFirstTierIsAllThatCounts(
      @ForAll Commission.Rule rule,
      @ForAll @LongRange(min = 1, max = 100_000) long end,
      @ForAll @BigRange(min = "0", max = "100") @Scale(2) BigDecimal first,
      @ForAll @BigRange(min = "0", max = "100") @Scale(2) BigDecimal second) {
    BigDecimal price = cents(end).getAmount();
    assertThat(twoTiers(rule, end, first, second).of(cents(end)).getAmount())
        .isEqualByComparingTo(
            price.multiply(first).movePointLeft(2).setScale(2, RoundingMode.HALF_UP));
  }

  @Property
  void theCapIsTheMostThatIsTaken(
      @ForAll @LongRange(min = 0, max = 10_000) long cap,
      @ForAll @BigRange(min = "0", max = "100") @Scale(2) BigDecimal percent,
      @ForAll @LongRange(min = 0, max = 1_000_000) long price) {
    Commission free = Commission.flat(percent);
    Money uncapped = free.of(cents(price));
    Money capped = free.withCap(cents(cap)).of(cents(price));
    assertThat(capped).isEqualTo(uncapped.isGreaterThan(cents(cap)) ? cents(cap) : uncapped);
  }

  @Property
  void tiersAreReadAsTheyAreWritten(
      @ForAll @LongRange(min = 1, max = 10_000_000) long end,
      @ForAll @BigRange(min = "0", max = "100") @Scale(3) BigDecimal first,
      @ForAll @BigRange(min = "0", max = "100") @Scale(3) BigDecimal second) {
    String text =
        first.toPlainString()
            + " up to "
            + cents(end).getAmount().toPlainString()
            + "; "
            + second.toPlainString()
            + " %";
    assertThat(Commission.parseTiers(text, CurrencyUnit.USD))
        .isEqualTo(twoTiers(Commission.Rule.EACH_PART, end, first, second).tiers());
  }
}
