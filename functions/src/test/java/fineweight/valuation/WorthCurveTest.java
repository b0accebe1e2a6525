package fineweight.valuation;

import static fineweight.valuation.Samples.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.metal.Metal;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class WorthCurveTest {
  private static final Set<Metal> SILVER = Set.of(Metal.SILVER);

  private static WorthCurve.Term silver(String paid, String added) {
    return new WorthCurve.Term(Metal.SILVER, new BigDecimal(paid), new BigDecimal(added));
  }

  private static WorthCurve curve(String floor, WorthCurve.Term... terms) {
    return new WorthCurve(new BigDecimal(floor), List.of(terms));
  }

  @Test
  void isTheHigherOfFloorAndMetal() {
    WorthCurve curve = curve("10", silver("40", "0"));
    assertThat(curve.at(new BigDecimal("0.1"), SILVER)).isEqualByComparingTo("10");
    assertThat(curve.at(new BigDecimal("0.5"), SILVER)).isEqualByComparingTo("20");
    assertThat(curve.bends(SILVER)).singleElement().isEqualTo(new BigDecimal("0.25"));
  }

  @Test
  void aMetalThatStandsStillCountsAtItsSpot() {
    WorthCurve curve =
        curve(
            "0",
            silver("40", "0"),
            new WorthCurve.Term(Metal.GOLD, new BigDecimal("7"), BigDecimal.ZERO));
    assertThat(curve.at(BigDecimal.TEN, SILVER)).isEqualByComparingTo("407");
    assertThat(curve.at(BigDecimal.TEN, Set.of(Metal.GOLD))).isEqualByComparingTo("110");
    assertThat(curve.at(BigDecimal.TEN, Set.of(Metal.GOLD, Metal.SILVER)))
        .isEqualByComparingTo("470");
  }

  @Test
  void aDeductionBendsTheCurveWhereItIsUsedUp() {
    WorthCurve curve = curve("0", silver("40", "-10"));
    assertThat(curve.at(new BigDecimal("0.25"), SILVER)).isEqualByComparingTo("0");
    assertThat(curve.at(new BigDecimal("0.1"), SILVER)).isEqualByComparingTo("0");
    assertThat(curve.at(BigDecimal.ONE, SILVER)).isEqualByComparingTo("30");
    assertThat(curve.bends(SILVER)).first().isEqualTo(new BigDecimal("0.25"));
  }

  @Test
  void bothBendsAreFound() {
    WorthCurve curve = curve("30", silver("40", "-10"));
    assertThat(curve.bends(SILVER))
        .satisfiesExactlyInAnyOrder(
            bend -> assertThat(bend).isEqualByComparingTo("0.25"),
            bend -> assertThat(bend).isEqualByComparingTo("1"));
  }

  @Test
  void anOwnPriceIsFlat() {
    WorthCurve flat =
        new Valuer(Samples.SPOTS)
            .value(Piece.of(Samples.DIME).priced(OwnPrice.stated(usd("5"))))
            .curve();
    assertThat(flat.bends(SILVER)).isEmpty();
    assertThat(flat.at(new BigDecimal("1000"), SILVER)).isEqualByComparingTo("5");
  }

  @Test
  void refusesWhatWouldFallWithSpot() {
    assertThatThrownBy(() -> silver("-1", "0")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> curve("-1")).isInstanceOf(IllegalArgumentException.class);
  }
}
