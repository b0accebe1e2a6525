package fineweight.assay;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.metal.Composition;
import fineweight.quantity.Mass;
import fineweight.quantity.MassUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;

/** Density of alloys against figures in handbooks. */
class DensityTest {
  @Test
  void fourteenCaratGoldAsInMetalWorkersHandbooks() {
    // Worked example: Au 583, Ag 104, Cu 313 with 19.32, 10.49 and 8.96 gives 13.33.
    assertThat(density("Au 583; Ag 104; Cu 313")).isEqualByComparingTo("13.33");
  }

  @Test
  void standardSilverAsInMetalWorkersTables() {
    // "Silver, standard 10.312" in older metal-workers' tables; mixing by volume gives 10.31.
    assertThat(density("Ag 900; Cu 100").subtract(new BigDecimal("10.312")).abs())
        .isLessThan(new BigDecimal("0.01"));
  }

  @Test
  void theWaterTestOfAHandbook() {
    // 26.965 - 0.043 g in air and 24.306 - 0.023 g in water give 10.2.
    BigDecimal measured = Density.measured(grams("26.922"), grams("24.283")).orElseThrow();
    assertThat(measured.setScale(1, RoundingMode.HALF_UP)).isEqualByComparingTo("10.2");
    assertThat(Density.of(Composition.parse("Ag 900; Cu 100")).orElseThrow().allows(measured))
        .isTrue();
    assertThat(Density.of(Composition.parse("Cu 750; Ni 250")).orElseThrow().allows(measured))
        .isFalse();
  }

  @Test
  void anAlloyOfUnknownSplitHasBounds() {
    Density bronze = Density.of(Composition.parse("Cu 950; Sn+Zn 50")).orElseThrow();
    assertThat(bronze.least()).isLessThan(bronze.most());
    assertThat(bronze.allows(new BigDecimal("8.86"))).isTrue();
  }

  @Test
  void anAlloyHalfUnnamedHasNone() {
    assertThat(Density.of(Composition.parse("Ag 500"))).isEmpty();
    assertThat(Density.measured(grams("5"), grams("5"))).isEmpty();
  }

  private static BigDecimal density(String alloy) {
    Density density = Density.of(Composition.parse(alloy)).orElseThrow();
    assertThat(density.least()).isEqualByComparingTo(density.most());
    return density.least().setScale(2, RoundingMode.HALF_UP);
  }

  private static Mass grams(String number) {
    return Mass.of(new BigDecimal(number), MassUnit.GRAM);
  }
}
