package fineweight.valuation;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.Mass;
import fineweight.quantity.MassUnit;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

class ValuerProperties {
  private static final Set<Metal> ALL = EnumSet.allOf(Metal.class);

  private static SpotPrices silverAt(BigDecimal price) {
    return SpotPrices.of(
        CurrencyUnit.USD,
        LocalDate.of(2026, 1, 2),
        List.of(new SpotPrice(Metal.SILVER, price, CurrencyUnit.USD, MassUnit.TROY_OUNCE)));
  }

  private static Piece piece(BigDecimal grams, int count, BigDecimal face) {
    return Piece.of(new FineContent(Map.of(Metal.SILVER, Mass.ofGrams(grams))))
        .times(count)
        .withFace(BigMoney.of(CurrencyUnit.USD, face));
  }

  @Property
  void aHigherSpotNeverLowersTheWorth(
      @ForAll @BigRange(min = "0.01", max = "200") @Scale(2) BigDecimal price,
      @ForAll @BigRange(min = "0", max = "50") @Scale(2) BigDecimal rise,
      @ForAll @BigRange(min = "0", max = "40") @Scale(4) BigDecimal grams,
      @ForAll @BigRange(min = "0", max = "5") @Scale(2) BigDecimal face,
      @ForAll @BigRange(min = "-40", max = "40") @Scale(2) BigDecimal added,
      @ForAll @IntRange(min = 1, max = 100) int count) {
    Payouts payouts =
        Payouts.atMelt()
            .with(Metal.SILVER, new Payout.PerOunce(BigMoney.of(CurrencyUnit.USD, added)));
    Valuer valuer = new Valuer(silverAt(price), payouts, DamageRule.LOWERS_TO_METAL);
    Piece piece = piece(grams, count, face);
    BigMoney before = valuer.value(piece).worth().money();
    BigMoney after = valuer.at(silverAt(price.add(rise))).value(piece).worth().money();
    assertThat(after.isLessThan(before)).isFalse();
    assertThat(before.isNegative()).isFalse();
  }

  @Property
  void theWorthIsNeverBelowFaceAndTheCurveAgreesWithIt(
      @ForAll @BigRange(min = "0.01", max = "200") @Scale(2) BigDecimal price,
      @ForAll @BigRange(min = "0", max = "40") @Scale(4) BigDecimal grams,
      @ForAll @BigRange(min = "0", max = "5") @Scale(2) BigDecimal face,
      @ForAll @IntRange(min = 1, max = 100) int count) {
    Valuation valuation = new Valuer(silverAt(price)).value(piece(grams, count, face));
    BigDecimal worth = valuation.worth().money().getAmount();
    assertThat(worth).isGreaterThanOrEqualTo(face.multiply(BigDecimal.valueOf(count)));
    assertThat(valuation.curve().at(BigDecimal.ONE, ALL)).isEqualByComparingTo(worth);
  }

  @Property
  void moreWearNeverRaisesTheWorth(
      @ForAll @BigRange(min = "0", max = "100") @Scale(2) BigDecimal one,
      @ForAll @BigRange(min = "0", max = "100") @Scale(2) BigDecimal other) {
    Valuer valuer = new Valuer(Samples.SPOTS);
    Piece dime = Piece.of(Samples.DIME);
    BigMoney lessWorn =
        valuer.value(dime.worn(new Wear.Percentage(one.min(other)))).worth().money();
    BigMoney moreWorn =
        valuer.value(dime.worn(new Wear.Percentage(one.max(other)))).worth().money();
    assertThat(moreWorn.isGreaterThan(lessWorn)).isFalse();
  }
}
