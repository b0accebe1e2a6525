package fineweight.lot;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.money.WantedGain;
import java.math.BigDecimal;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Scale;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

class BidProperties {
  @Provide
  Arbitrary<WantedGain> wanted() {
    Arbitrary<BigDecimal> percent =
        Arbitraries.bigDecimals().between(BigDecimal.ZERO, new BigDecimal("99")).ofScale(1);
    return Arbitraries.oneOf(
        percent.map(WantedGain.Margin::new),
        percent.map(WantedGain.Markup::new),
        Arbitraries.longs()
            .between(0, 20_000)
            .map(cents -> new WantedGain.Fixed(Money.ofMinor(CurrencyUnit.USD, cents))));
  }

  @Property
  void theBidEarnsWhatIsWantedAndOneCentMoreDoesNot(
      @ForAll @LongRange(min = 0, max = 1_000_000) long worthCents,
      @ForAll @LongRange(min = 0, max = 5_000) long postageCents,
      @ForAll @BigRange(min = "0", max = "30") @Scale(2) BigDecimal premium,
      @ForAll @BigRange(min = "0", max = "25") @Scale(2) BigDecimal tax,
      @ForAll boolean taxOnPostage,
      @ForAll("wanted") WantedGain wanted) {
    Money worth = Money.ofMinor(CurrencyUnit.USD, worthCents);
    Money postage = Money.ofMinor(CurrencyUnit.USD, postageCents);
    BuyingTerms terms = new BuyingTerms(premium, tax, postage, taxOnPostage);
    Optional<LotCost> bid = Bid.of(terms, wanted, worth, worth).low();
    Money oneMore =
        bid.map(LotCost::price).orElse(Money.of(CurrencyUnit.USD, new BigDecimal("-0.01")));
    bid.ifPresent(cost -> assertThat(wanted.isEarned(worth, worth, cost.total())).isTrue());
    assertThat(wanted.isEarned(worth, worth, terms.at(oneMore.plusMinor(1)).total())).isFalse();
  }
}
