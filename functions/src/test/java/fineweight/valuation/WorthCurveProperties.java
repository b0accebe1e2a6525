package fineweight.valuation;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.metal.Metal;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;

class WorthCurveProperties {
  private static final Set<Metal> MOVING = Set.of(Metal.SILVER, Metal.GOLD);
  private static final BigDecimal HALF = new BigDecimal("0.5");
  private static final BigDecimal NEGLIGIBLE = new BigDecimal("1e-25");

  @Provide
  Arbitrary<WorthCurve> curves() {
    Arbitrary<BigDecimal> paid =
        Arbitraries.bigDecimals().between(BigDecimal.ZERO, new BigDecimal("500")).ofScale(2);
    Arbitrary<BigDecimal> added =
        Arbitraries.bigDecimals().between(new BigDecimal("-200"), new BigDecimal("50")).ofScale(2);
    Arbitrary<WorthCurve.Term> term =
        Combinators.combine(Arbitraries.of(Metal.SILVER, Metal.GOLD, Metal.COPPER), paid, added)
            .as(WorthCurve.Term::new);
    return Combinators.combine(paid, term.list().ofMaxSize(4)).as(WorthCurve::new);
  }

  @Property
  void isStraightBetweenItsBends(@ForAll("curves") WorthCurve curve) {
    TreeSet<BigDecimal> bends = new TreeSet<>(curve.bends(MOVING));
    bends.add(BigDecimal.ZERO);
    bends.add(bends.last().add(BigDecimal.TEN));
    List<BigDecimal> points = new ArrayList<>(bends);
    for (int i = 1; i < points.size(); i++) {
      BigDecimal from = points.get(i - 1);
      BigDecimal to = points.get(i);
      BigDecimal middle = from.add(to).multiply(HALF);
      BigDecimal chord =
          curve.at(from, MOVING).add(curve.at(to, MOVING)).multiply(HALF, MathContext.UNLIMITED);
      assertThat(curve.at(middle, MOVING).subtract(chord).abs()).isLessThan(NEGLIGIBLE);
    }
  }

  @Property
  void neverFallsAndNeverGoesBelowItsFloor(
      @ForAll("curves") WorthCurve curve,
      @ForAll @BigRange(min = "0", max = "5") @Scale(3) BigDecimal one,
      @ForAll @BigRange(min = "0", max = "5") @Scale(3) BigDecimal other) {
    BigDecimal lower = curve.at(one.min(other), MOVING);
    BigDecimal higher = curve.at(one.max(other), MOVING);
    assertThat(lower).isLessThanOrEqualTo(higher);
    assertThat(lower).isGreaterThanOrEqualTo(curve.floor());
  }

  @Property
  void bendsLieAboveZeroOnly(@ForAll("curves") WorthCurve curve) {
    assertThat(curve.bends(MOVING)).allSatisfy(bend -> assertThat(bend).isPositive());
  }
}
