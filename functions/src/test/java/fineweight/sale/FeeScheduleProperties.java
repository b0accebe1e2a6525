package fineweight.sale;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.money.WantedGain;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

class FeeScheduleProperties {
  private static final long MOST = 15_000;

  private static Money cents(long cents) {
    return Money.ofMinor(CurrencyUnit.USD, cents);
  }

  private static Arbitrary<BigDecimal> percent(int most) {
    return Arbitraries.bigDecimals().between(BigDecimal.ZERO, BigDecimal.valueOf(most)).ofScale(2);
  }

  private static Arbitrary<Money> money(long most) {
    return Arbitraries.longs().between(0, most).map(FeeScheduleProperties::cents);
  }

  @Provide
  Arbitrary<FeeSchedule> schedules() {
    Arbitrary<Commission> commissions =
        Combinators.combine(
                percent(60),
                percent(60),
                Arbitraries.longs().between(1, 40_000),
                Arbitraries.of(Commission.Rule.values()),
                money(9_000).optional(),
                Arbitraries.of(true, false))
            .as(
                (first, second, end, rule, cap, onPostage) ->
                    new Commission(
                        List.of(
                            new Commission.Tier(Optional.of(cents(end)), first),
                            new Commission.Tier(Optional.empty(), second)),
                        rule,
                        cap,
                        onPostage));
    Arbitrary<Payment> payments = Combinators.combine(percent(8), money(100)).as(Payment::new);
    Arbitrary<Handling> handling =
        Combinators.combine(money(1_500), money(1_500), money(300)).as(Handling::new);
    return Combinators.combine(commissions, money(500), payments, handling)
        .as((c, fixed, payment, h) -> new FeeSchedule("invented", c, fixed, payment, h));
  }

  @Provide
  Arbitrary<WantedGain> wanted() {
    return Arbitraries.oneOf(
        Arbitraries.just(WantedGain.none()),
        percent(25).map(WantedGain.Margin::new),
        percent(120).map(WantedGain.Markup::new),
        money(5_000).map(WantedGain.Fixed::new));
  }

  @Property
  void theNetOfTheLeastPriceEarnsWhatIsWantedAndOneCentLessDoesNot(
      @ForAll("schedules") FeeSchedule schedule,
      @ForAll @LongRange(min = 0, max = 60_000) long costCents,
      @ForAll("wanted") WantedGain wanted) {
    Money cost = cents(costCents);
    LeastPrice least = schedule.leastPrice(cost, wanted).orElseThrow();
    Money price = least.proceeds().price();
    assertThat(wanted.isEarned(price, schedule.net(price), cost)).isTrue();
    assertThat(least.gain().money()).isEqualTo(schedule.net(price).minus(cost));
    if (price.isPositive()) {
      Money less = price.minus(cents(1));
      assertThat(wanted.isEarned(less, schedule.net(less), cost)).isFalse();
    }
  }

  /** The search halves and jumps; trying every price from zero on must find the same one. */
  @Property(tries = 300)
  void noLowerPriceEarnsIt(
      @ForAll("schedules") FeeSchedule schedule,
      @ForAll @LongRange(min = 0, max = 3_000) long costCents,
      @ForAll("wanted") WantedGain wanted) {
    assertFoundByTrying(schedule, cents(costCents), wanted);
  }

  /**
   * Fees and margins so high that a price may bring less than a lower one, until a cap or the next
   * tier turns the line round, or that no price will do.
   */
  @Property(tries = 400)
  void norDoesOneWhereFeesEatThePrice(
      @ForAll @LongRange(min = 0, max = 99) long first,
      @ForAll @LongRange(min = 0, max = 99) long second,
      @ForAll @LongRange(min = 1, max = 4_000) long end,
      @ForAll Commission.Rule rule,
      @ForAll @LongRange(min = 0, max = 2_000) long cap,
      @ForAll boolean onPostage,
      @ForAll @LongRange(min = 0, max = 1_500) long postage,
      @ForAll @LongRange(min = 0, max = 1_500) long cost,
      @ForAll @LongRange(min = 0, max = 90) long margin) {
    Commission commission =
        new Commission(
            List.of(
                new Commission.Tier(Optional.of(cents(end)), BigDecimal.valueOf(first)),
                new Commission.Tier(Optional.empty(), BigDecimal.valueOf(second))),
            rule,
            Optional.of(cents(cap)).filter(money -> cap % 2 == 0),
            onPostage);
    FeeSchedule schedule =
        new FeeSchedule(
            "invented",
            commission,
            cents(30),
            Payment.none(CurrencyUnit.USD),
            new Handling(cents(postage), cents(0), cents(0)));
    assertFoundByTrying(schedule, cents(cost), new WantedGain.Margin(BigDecimal.valueOf(margin)));
  }

  private static void assertFoundByTrying(FeeSchedule schedule, Money cost, WantedGain wanted) {
    Optional<Money> found =
        schedule.leastPrice(cost, wanted).map(least -> least.proceeds().price());
    long tried = 0;
    while (tried < MOST && !wanted.isEarned(cents(tried), schedule.net(cents(tried)), cost)) {
      tried++;
    }
    if (tried < MOST) {
      assertThat(found).contains(cents(tried));
    } else {
      assertThat(found.filter(price -> price.isLessThan(cents(MOST)))).isEmpty();
    }
  }

  @Property
  void thePartsOfASaleAddUp(
      @ForAll("schedules") FeeSchedule schedule,
      @ForAll @LongRange(min = 0, max = 500_000) long priceCents) {
    Proceeds proceeds = schedule.at(cents(priceCents));
    Money back =
        proceeds
            .net()
            .plus(proceeds.fees())
            .plus(proceeds.handling().paid())
            .plus(proceeds.handling().packing())
            .minus(proceeds.handling().charged());
    assertThat(back).isEqualTo(cents(priceCents));
    assertThat(proceeds.fees().isNegative()).isFalse();
  }
}
