package fineweight.lot;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.metal.Metal;
import fineweight.money.Amounts;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import fineweight.valuation.DamageRule;
import fineweight.valuation.OwnPrice;
import fineweight.valuation.Payout;
import fineweight.valuation.Payouts;
import fineweight.valuation.Piece;
import fineweight.valuation.Samples;
import fineweight.valuation.Valuer;
import fineweight.valuation.WorthCurve;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

class BreakEvenProperties {
  private static final Payouts PAYOUTS =
      Payouts.atMelt()
          .with(Metal.SILVER, Payout.percent("93.5"))
          .with(Metal.SILVER, "per ounce", new Payout.PerOunce(Samples.usd("-1.75")))
          .with(Metal.SILVER, "per piece", new Payout.PerPiece(Samples.usd("0.80")));

  private static Valuer valuer(SpotPrices spots) {
    return new Valuer(spots, PAYOUTS, DamageRule.LOWERS_TO_METAL);
  }

  /** Pieces of silver with a face, some of them priced by their owner, in three payout classes. */
  @Provide
  Arbitrary<List<Piece>> lots() {
    Arbitrary<BigDecimal> grams =
        Arbitraries.bigDecimals().between(BigDecimal.ZERO, new BigDecimal("40")).ofScale(3);
    Arbitrary<BigDecimal> face =
        Arbitraries.bigDecimals().between(BigDecimal.ZERO, new BigDecimal("20")).ofScale(2);
    Arbitrary<Integer> count = Arbitraries.integers().between(1, 20);
    Arbitrary<String> payoutClass = Arbitraries.of("", "per ounce", "per piece");
    Arbitrary<Boolean> priced = Arbitraries.of(true, false, false, false);
    return Combinators.combine(grams, face, count, payoutClass, priced)
        .as(
            (g, f, n, c, own) -> {
              BigMoney money = BigMoney.of(CurrencyUnit.USD, f);
              Piece piece =
                  Piece.of(Samples.silver(g.toPlainString())).times(n).inClass(c).withFace(money);
              return own ? piece.priced(OwnPrice.stated(money)) : piece;
            })
        .list()
        .ofMaxSize(15);
  }

  @Property
  void theSpotPutBackGivesZeroGainOrNoSpotDoes(
      @ForAll("lots") List<Piece> lot, @ForAll @LongRange(min = 1, max = 500_000) long cents) {
    Money cost = Money.ofMinor(CurrencyUnit.USD, cents);
    List<WorthCurve> curves = curves(lot, Samples.SPOTS);
    BreakEven breakEven = BreakEven.ofMetal(cost, curves, Samples.perOunce(Metal.SILVER, "30"));
    if (breakEven.spot().isPresent()) {
      assertThat(worth(lot, at(breakEven.spot().get()))).isEqualTo(cost);
    } else {
      // At next to nothing it covers its cost already, or at a thousandfold spot not yet.
      boolean covered = !worth(lot, silver("0.0000001")).isLessThan(cost);
      boolean outOfReach = worth(lot, silver("30000")).isLessThan(cost);
      assertThat(covered || outOfReach).isTrue();
    }
  }

  @Property
  void theFactorForAllMetalsPutBackGivesZeroGain(
      @ForAll("lots") List<Piece> lot, @ForAll @LongRange(min = 1, max = 500_000) long cents) {
    Money cost = Money.ofMinor(CurrencyUnit.USD, cents);
    BreakEven breakEven = BreakEven.ofAllMetals(cost, curves(lot, Samples.SPOTS));
    breakEven
        .factor()
        .ifPresent(
            factor ->
                assertThat(
                        worth(lot, silver(new BigDecimal("30").multiply(factor).toPlainString())))
                    .isEqualTo(cost));
  }

  @Property
  void theTableOfSpotsNeverFallsAsSpotRises(@ForAll("lots") List<Piece> lot) {
    SpotTable table =
        SpotTable.of(
            Money.parse("USD 100.00"),
            curves(lot, Samples.SPOTS),
            java.util.EnumSet.allOf(Metal.class),
            SpotTable.USUAL_MOVES);
    assertThat(table.lines()).isSortedAccordingTo((a, b) -> a.worth().compareTo(b.worth()));
  }

  private static List<WorthCurve> curves(List<Piece> lot, SpotPrices spots) {
    return lot.stream().map(piece -> valuer(spots).value(piece).curve()).toList();
  }

  /** The exact worth of the lot, looked up anew at the given prices, to the cent. */
  private static Money worth(List<Piece> lot, SpotPrices spots) {
    BigMoney sum = BigMoney.zero(CurrencyUnit.USD);
    for (Piece piece : lot) {
      sum = sum.plus(valuer(spots).value(piece).worth().money());
    }
    // Beyond twelve places lie the rounded divisions of ounces and of the solution.
    return Amounts.atCell(sum.rounded(12, RoundingMode.HALF_UP));
  }

  private static SpotPrices silver(String price) {
    return at(Samples.perOunce(Metal.SILVER, price));
  }

  private static SpotPrices at(SpotPrice silver) {
    return SpotPrices.of(CurrencyUnit.USD, Samples.SPOTS.date(), List.of(silver));
  }
}
