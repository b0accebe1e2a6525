package fineweight.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/**
 * Margin and markup as an accounting text keeps them apart: AccountingCoach, "What is the
 * difference between gross margin and markup?": bought for 8, sold for 10, the margin is 20 % (2 of
 * 10), the markup 25 % (2 of 8).
 */
class GainTest {
  private static final Money COST = Money.parse("USD 8.00");
  private static final Money PRICE = Money.parse("USD 10.00");

  @Test
  void theGainInPerCentIsOfTheCost() {
    Gain gain = Gain.of(PRICE, COST);
    assertThat(gain.money()).isEqualTo(Money.parse("USD 2.00"));
    assertThat(gain.percentOfCost().orElseThrow()).isEqualByComparingTo("25");
  }

  @Test
  void aShortfallIsANegativeGain() {
    Gain gain = Gain.of(COST, PRICE);
    assertThat(gain.money()).isEqualTo(Money.parse("USD -2.00"));
    assertThat(gain.percentOfCost().orElseThrow()).isEqualByComparingTo("-20");
  }

  @Test
  void nothingPaidHasNoPercentage() {
    assertThat(Gain.of(PRICE, Money.parse("USD 0.00")).percentOfCost()).isEmpty();
  }

  @Test
  void aMarginIsASharePriceAndAMarkupAShareOfCost() {
    assertThat(new WantedGain.Margin(new BigDecimal("20")).isEarned(PRICE, PRICE, COST)).isTrue();
    assertThat(new WantedGain.Margin(new BigDecimal("20.01")).isEarned(PRICE, PRICE, COST))
        .isFalse();
    assertThat(new WantedGain.Markup(new BigDecimal("25")).isEarned(PRICE, PRICE, COST)).isTrue();
    assertThat(new WantedGain.Markup(new BigDecimal("25.01")).isEarned(PRICE, PRICE, COST))
        .isFalse();
    assertThat(new WantedGain.Fixed(Money.parse("USD 2.00")).isEarned(PRICE, PRICE, COST)).isTrue();
    assertThat(new WantedGain.Fixed(Money.parse("USD 2.01")).isEarned(PRICE, PRICE, COST))
        .isFalse();
  }

  @Test
  void wantingNothingIsTheCostBack() {
    assertThat(WantedGain.none().isEarned(PRICE, COST, COST)).isTrue();
    assertThat(WantedGain.none().isEarned(PRICE, Money.parse("USD 7.99"), COST)).isFalse();
    assertThat(WantedGain.none().words()).isEqualTo("the cost back");
  }

  @Test
  void refusesWhatNobodyCanWant() {
    assertThatThrownBy(() -> new WantedGain.Margin(new BigDecimal("101")))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new WantedGain.Markup(new BigDecimal("-1")))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new WantedGain.Fixed(Money.parse("USD -0.01")))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(new WantedGain.Markup(new BigDecimal("150")).words())
        .isEqualTo("a markup of 150 % on the cost");
    assertThat(new WantedGain.Margin(new BigDecimal("20.0")).words())
        .isEqualTo("a margin of 20 % of the price");
    assertThat(new WantedGain.Fixed(Money.parse("USD 5.00")).words())
        .isEqualTo("a gain of 5.00 USD");
  }
}
