package fineweight.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Units of mass against NIST Handbook 44, Appendix C, General Tables of Units of Measurement: 1
 * grain = 64.798 91 milligrams exactly; 1 pennyweight = 24 grains; 1 troy ounce = 480 grains; 1
 * avoirdupois ounce = 437.5 grains; 1 avoirdupois pound = 7000 grains = 453.592 37 grams exactly.
 */
class MassUnitTest {
  private static final BigDecimal GRAIN = new BigDecimal("0.06479891");

  @ParameterizedTest
  @CsvSource({
    "GRAIN, 1",
    "PENNYWEIGHT, 24",
    "TROY_OUNCE, 480",
    "AVOIRDUPOIS_OUNCE, 437.5",
    "POUND, 7000"
  })
  void grains(MassUnit unit, BigDecimal grains) {
    assertThat(unit.grams()).isEqualByComparingTo(grains.multiply(GRAIN));
  }

  @ParameterizedTest
  @CsvSource({"POUND, 453.59237", "GRAM, 1", "KILOGRAM, 1000", "TONNE, 1000000"})
  void grams(MassUnit unit, BigDecimal grams) {
    assertThat(unit.grams()).isEqualByComparingTo(grams);
  }
}
