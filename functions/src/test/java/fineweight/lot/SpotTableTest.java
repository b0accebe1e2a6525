package fineweight.lot;

import static fineweight.valuation.Samples.ounces;
import static fineweight.valuation.Samples.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.metal.Metal;
import fineweight.valuation.Piece;
import fineweight.valuation.Samples;
import fineweight.valuation.Valuer;
import fineweight.valuation.WorthCurve;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class SpotTableTest {
  private static final Money COST = Money.parse("USD 250.00");
  private static final Valuer VALUER = new Valuer(Samples.SPOTS);
  private static final List<WorthCurve> LOT =
      List.of(
          VALUER.value(Piece.of(ounces(Metal.SILVER, "10"))).curve(),
          VALUER.value(Piece.of(ounces(Metal.SILVER, "1")).withFace(usd("28.50"))).curve());

  /** Ten ounces at 30 and a piece that never falls below its face of 28.50. */
  @Test
  void showsTheWorthFromThirtyPerCentBelowToThirtyAbove() {
    SpotTable table = SpotTable.of(COST, LOT, EnumSet.allOf(Metal.class), SpotTable.USUAL_MOVES);
    assertThat(table.lines())
        .extracting(line -> line.movePercent() + " " + line.worth().getAmount())
        .containsExactly(
            "-30 238.50",
            "-20 268.50",
            "-10 298.50",
            "0 330.00",
            "10 363.00",
            "20 396.00",
            "30 429.00");
    assertThat(table.lines().get(0).gain().money()).isEqualTo(Money.parse("USD -11.50"));
  }

  @Test
  void aMetalThatDoesNotMoveLeavesTheWorthAlone() {
    SpotTable table = SpotTable.of(COST, LOT, Set.of(Metal.GOLD), List.of(-30, 30));
    assertThat(table.lines())
        .allSatisfy(line -> assertThat(line.worth()).isEqualTo(Money.parse("USD 330.00")));
  }

  @Test
  void spotMayFallToNothingButNotBelow() {
    assertThat(SpotTable.of(COST, LOT, Set.of(Metal.SILVER), List.of(-100)).lines().get(0).worth())
        .isEqualTo(Money.parse("USD 28.50"));
    assertThatThrownBy(() -> SpotTable.of(COST, LOT, Set.of(Metal.SILVER), List.of(-101)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("-101");
  }
}
