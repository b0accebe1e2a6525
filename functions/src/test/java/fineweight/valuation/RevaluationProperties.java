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
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.joda.money.CurrencyUnit;

/** The curve kept with a valuation must say what a new valuation at other prices would say. */
class RevaluationProperties {
  private static final BigDecimal NEGLIGIBLE = new BigDecimal("1e-20");

  private static final Payouts PAYOUTS =
      Payouts.atMelt()
          .with(Metal.SILVER, Payout.percent("91"))
          .with(Metal.GOLD, new Payout.PerOunce(Samples.usd("-35")))
          .with(Metal.COPPER, new Payout.PerPiece(Samples.usd("0.02")))
          .with(Metal.SILVER, "round", new Payout.PerOunce(Samples.usd("1.10")));

  private static SpotPrices spots(BigDecimal silver, BigDecimal gold, BigDecimal copper) {
    return SpotPrices.of(
        CurrencyUnit.USD,
        LocalDate.of(2026, 1, 2),
        List.of(
            new SpotPrice(Metal.SILVER, silver, CurrencyUnit.USD, MassUnit.TROY_OUNCE),
            new SpotPrice(Metal.GOLD, gold, CurrencyUnit.USD, MassUnit.TROY_OUNCE),
            new SpotPrice(Metal.COPPER, copper, CurrencyUnit.USD, MassUnit.POUND)));
  }

  @Provide
  Arbitrary<Piece> pieces() {
    Arbitrary<BigDecimal> grams =
        Arbitraries.bigDecimals().between(BigDecimal.ZERO, new BigDecimal("35")).ofScale(4);
    Arbitrary<FineContent> contents =
        Combinators.combine(grams, grams, grams)
            .as(
                (silver, gold, copper) ->
                    new FineContent(
                        Map.of(
                            Metal.SILVER, Mass.ofGrams(silver),
                            Metal.GOLD, Mass.ofGrams(gold.movePointLeft(1)),
                            Metal.COPPER, Mass.ofGrams(copper))));
    Arbitrary<BigDecimal> money =
        Arbitraries.bigDecimals().between(BigDecimal.ZERO, new BigDecimal("300")).ofScale(2);
    return Combinators.combine(
            contents,
            Arbitraries.integers().between(1, 30),
            Arbitraries.of("", "round"),
            money,
            Arbitraries.of(true, false, false, false))
        .as(
            (content, count, payoutClass, amount, priced) -> {
              Piece piece =
                  Piece.of(content)
                      .times(count)
                      .inClass(payoutClass)
                      .withFace(Samples.usd(amount.toPlainString()));
              return priced
                  ? piece.priced(OwnPrice.stated(Samples.usd(amount.toPlainString())))
                  : piece;
            });
  }

  @Property
  void theCurveAgreesWithANewValuation(
      @ForAll("pieces") Piece piece,
      @ForAll @BigRange(min = "0.01", max = "4") @Scale(3) BigDecimal factor) {
    Valuer today = valuer(spots(d("30"), d("2500"), d("4.1")));
    WorthCurve curve = today.value(piece).curve();
    assertSame(
        curve.at(factor, EnumSet.allOf(Metal.class)),
        today.at(
            spots(d("30").multiply(factor), d("2500").multiply(factor), d("4.1").multiply(factor))),
        piece);
    assertSame(
        curve.at(factor, Set.of(Metal.SILVER)),
        today.at(spots(d("30").multiply(factor), d("2500"), d("4.1"))),
        piece);
    assertSame(
        curve.at(factor, Set.of(Metal.GOLD)),
        today.at(spots(d("30"), d("2500").multiply(factor), d("4.1"))),
        piece);
  }

  @Property
  void twoRowsOfOnePieceAreWorthOneRowOfTwo(@ForAll("pieces") Piece piece) {
    Valuer valuer = valuer(spots(d("30"), d("2500"), d("4.1")));
    BigDecimal once = valuer.value(piece).worth().money().getAmount();
    BigDecimal twice = valuer.value(piece.times(2 * piece.count())).worth().money().getAmount();
    assertThat(twice.subtract(once).subtract(once).abs()).isLessThan(NEGLIGIBLE);
  }

  private static void assertSame(BigDecimal worth, Valuer valuer, Piece piece) {
    BigDecimal anew = valuer.value(piece).worth().money().getAmount();
    assertThat(worth.subtract(anew).abs()).isLessThan(NEGLIGIBLE);
  }

  private static Valuer valuer(SpotPrices spots) {
    return new Valuer(spots, PAYOUTS, DamageRule.LOWERS_TO_METAL);
  }

  private static BigDecimal d(String value) {
    return new BigDecimal(value);
  }
}
