package fineweight.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.quantity.Mass;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WearTest {
  @Test
  void asStruckNothingIsLost() {
    assertThat(Wear.none().remaining()).isEqualByComparingTo("1");
    assertThat(Wear.none().lost()).isEqualByComparingTo("0");
    assertThat(Wear.none().words()).isEqualTo("no wear");
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "2, 0.98", "1.16, 0.9884", "100, 0"})
  void aPercentageLeavesTheRest(BigDecimal percent, BigDecimal remaining) {
    assertThat(new Wear.Percentage(percent).remaining()).isEqualByComparingTo(remaining);
  }

  @ParameterizedTest
  @CsvSource({"-1", "100.5"})
  void refusesAPercentageOutsideZeroToHundred(BigDecimal percent) {
    assertThatThrownBy(() -> new Wear.Percentage(percent))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("the wear");
  }

  /**
   * A bag of $1000 face of worn 90 % coin trades as 715 ounces, about 1.16 % below 723.4 as struck
   * (common practice, no source).
   */
  @Test
  void theTradesAllowanceTurnsAStruckBagIntoAWornOne() {
    Wear wear = Wear.tradeAllowance();
    assertThat(new BigDecimal("723.4").multiply(wear.remaining()).setScale(3, RoundingMode.HALF_UP))
        .isEqualByComparingTo("715.000");
    assertThat(wear.lost().movePointRight(2).setScale(2, RoundingMode.HALF_UP))
        .isEqualByComparingTo("1.16");
  }

  /**
   * Source: Coinage Act of 1873, section 14: a double eagle of 516 grains stays current down to
   * half of one per cent below, that is 513.42 grains.
   */
  @Test
  void theScaleTellsTheLeastCurrentWeightOfADoubleEagle() {
    Wear wear =
        new Wear.MeasuredMass(
            Mass.ofGrains(new BigDecimal("513.42")), Mass.ofGrains(new BigDecimal("516")));
    assertThat(wear.lost()).isEqualByComparingTo("0.005");
  }

  @Test
  void aPieceHeavierThanItsStandardCountsAsUnworn() {
    Wear wear = new Wear.MeasuredMass(Mass.ofGrams("12.6"), Mass.ofGrams("12.5"));
    assertThat(wear.remaining()).isEqualByComparingTo("1");
    assertThat(wear.words()).contains("12.6 g").contains("12.5 g");
  }

  @Test
  void refusesAMassOfNothing() {
    assertThatThrownBy(() -> new Wear.MeasuredMass(Mass.ZERO, Mass.ofGrams("12.5")))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Wear.MeasuredMass(Mass.ofGrams("12.5"), Mass.ZERO))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void isToldInWords() {
    assertThat(new Wear.Percentage(new BigDecimal("2.50")).words()).isEqualTo("2.5 % wear");
    assertThat(Wear.tradeAllowance().words())
        .isEqualTo("the trade's allowance for worn coin, 0.715 for 0.7234 ounces");
  }
}
