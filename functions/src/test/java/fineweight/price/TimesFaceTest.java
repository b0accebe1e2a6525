package fineweight.price;

import static fineweight.valuation.Samples.perOunce;
import static fineweight.valuation.Samples.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.metal.Metal;
import fineweight.spot.SpotPrice;
import fineweight.valuation.Wear;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;

class TimesFaceTest {
  private static final SpotPrice THIRTY = perOunce(Metal.SILVER, "30");

  /**
   * From the statute: 22.5 g of silver in a dollar of face (Coinage Act of 1873, section 15) are
   * worth one dollar when an ounce of 31.1034768 g costs 1.38237...
   */
  @Test
  void atParityTheCoinsAreWorthTheirFace() {
    SpotPrice parity = perOunce(Metal.SILVER, "1.3823767466666667");
    assertThat(TimesFace.atMelt(parity, Wear.none()).times().setScale(9, RoundingMode.HALF_UP))
        .isEqualByComparingTo("1");
  }

  /** 0.7234 and 0.715 ounces to the dollar at 30: 21.70 and 21.45 times face (common practice). */
  @Test
  void meltAsTimesFace() {
    assertThat(TimesFace.atMelt(THIRTY, Wear.none()).times().setScale(2, RoundingMode.HALF_UP))
        .isEqualByComparingTo("21.70");
    assertThat(
            TimesFace.atMelt(THIRTY, Wear.tradeAllowance())
                .times()
                .setScale(2, RoundingMode.HALF_UP))
        .isEqualByComparingTo("21.45");
  }

  @Test
  void aQuotePaysSoManyTimesTheFace() {
    assertThat(new TimesFace(new BigDecimal("20.5")).of(usd("12.35")).isEqual(usd("253.175")))
        .isTrue();
  }

  @Test
  void aQuoteIsAPayoutInPerCentOfMelt() {
    TimesFace melt = TimesFace.atMelt(THIRTY, Wear.none());
    assertThat(melt.asPayout(THIRTY, Wear.none()).percent()).isEqualByComparingTo("100");
    TimesFace half = new TimesFace(melt.times().divide(new BigDecimal("2")));
    assertThat(half.asPayout(THIRTY, Wear.none()).percent()).isEqualByComparingTo("50");
    assertThat(melt.asPayout(THIRTY, Wear.tradeAllowance()).percent())
        .isBetween(new BigDecimal("101.1"), new BigDecimal("101.2"));
  }

  @Test
  void refusesOtherMetalsAndNegativeQuotes() {
    assertThatThrownBy(() -> TimesFace.atMelt(perOunce(Metal.GOLD, "2500"), Wear.none()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("gold");
    assertThatThrownBy(() -> new TimesFace(new BigDecimal("-1")))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> TimesFace.atMelt(THIRTY, new Wear.Percentage(new BigDecimal("100"))))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
