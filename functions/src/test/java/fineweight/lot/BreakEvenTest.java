package fineweight.lot;

import static fineweight.valuation.Samples.ounces;
import static fineweight.valuation.Samples.usd;
import static org.assertj.core.api.Assertions.assertThat;

import fineweight.metal.Metal;
import fineweight.spot.SpotPrice;
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
import java.util.stream.Stream;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Silver stands at 30, gold at 2500 an ounce; both are invented. */
class BreakEvenTest {
  private static final SpotPrice SILVER = Samples.perOunce(Metal.SILVER, "30");
  private static final Piece TEN_OUNCES = Piece.of(ounces(Metal.SILVER, "10"));
  // One ounce of silver in a piece that is also 20 dollars: metal counts above 20 an ounce.
  private static final Piece OUNCE_OF_TWENTY_DOLLARS =
      Piece.of(ounces(Metal.SILVER, "1")).withFace(usd("20"));
  private static final Piece PRICED = Piece.of(ounces(Metal.SILVER, "1")).priced(stated("100"));

  private static OwnPrice stated(String amount) {
    return OwnPrice.stated(usd(amount));
  }

  private static List<WorthCurve> curves(Valuer valuer, Piece... pieces) {
    return Stream.of(pieces).map(piece -> valuer.value(piece).curve()).toList();
  }

  private static BreakEven silver(String cost, Piece... pieces) {
    return BreakEven.ofMetal(
        Money.parse("USD " + cost), curves(new Valuer(Samples.SPOTS), pieces), SILVER);
  }

  private static BigDecimal spot(BreakEven breakEven) {
    return breakEven.spot().orElseThrow().amount();
  }

  @Test
  void tenOuncesThatCost240BreakEvenAt24() {
    BreakEven breakEven = silver("240.00", TEN_OUNCES);
    assertThat(spot(breakEven)).isEqualByComparingTo("24");
    assertThat(breakEven.factor().orElseThrow()).isEqualByComparingTo("0.8");
    assertThat(breakEven.sentence())
        .isEqualTo("the lot is worth its cost of 240.00 USD with silver at 24.00 USD per ozt");
  }

  @Test
  void aFixedPriceIsTakenOffFirst() {
    assertThat(spot(silver("340.00", TEN_OUNCES, PRICED))).isEqualByComparingTo("24");
  }

  /** Below 20 an ounce: 10 s + 20 = 170 at s = 15. Above: 11 s = 275 at s = 25. */
  @Test
  void theSolutionIsFoundOnTheRightPieceOfTheCurve() {
    assertThat(spot(silver("170.00", TEN_OUNCES, OUNCE_OF_TWENTY_DOLLARS)))
        .isEqualByComparingTo("15");
    assertThat(spot(silver("275.00", TEN_OUNCES, OUNCE_OF_TWENTY_DOLLARS)))
        .isEqualByComparingTo("25");
  }

  @Test
  void theBendItselfIsASolution() {
    BigDecimal spot = spot(silver("220.00", TEN_OUNCES, OUNCE_OF_TWENTY_DOLLARS));
    assertThat(spot.setScale(20, RoundingMode.HALF_UP)).isEqualByComparingTo("20");
  }

  /** Payout of 95 %: 10 x 0.95 s = 228 at s = 24. */
  @Test
  void thePayoutCounts() {
    Valuer valuer =
        new Valuer(
            Samples.SPOTS,
            Payouts.atMelt().with(Metal.SILVER, Payout.percent("95")),
            DamageRule.LOWERS_TO_METAL);
    BreakEven breakEven =
        BreakEven.ofMetal(Money.parse("USD 228.00"), curves(valuer, TEN_OUNCES), SILVER);
    assertThat(spot(breakEven)).isEqualByComparingTo("24");
  }

  /** Two dollars off each ounce: 10 (s - 2) = 220 at s = 24. */
  @Test
  void aDeductionPerOunceCounts() {
    Valuer valuer =
        new Valuer(
            Samples.SPOTS,
            Payouts.atMelt().with(Metal.SILVER, new Payout.PerOunce(usd("-2"))),
            DamageRule.LOWERS_TO_METAL);
    BreakEven breakEven =
        BreakEven.ofMetal(Money.parse("USD 220.00"), curves(valuer, TEN_OUNCES), SILVER);
    assertThat(spot(breakEven)).isEqualByComparingTo("24");
  }

  @Test
  void theOtherMetalsStayWhereTheyAre() {
    Piece gold = Piece.of(ounces(Metal.GOLD, "0.1"));
    assertThat(spot(silver("490.00", TEN_OUNCES, gold))).isEqualByComparingTo("24");
    BreakEven together =
        BreakEven.ofAllMetals(
            Money.parse("USD 440.00"), curves(new Valuer(Samples.SPOTS), TEN_OUNCES, gold));
    assertThat(together.factor().orElseThrow()).isEqualByComparingTo("0.8");
    assertThat(together.spot()).isEmpty();
    assertThat(together.sentence()).endsWith("with all metals at 80.00 % of today's spot");
  }

  @Test
  void aLotCoveredByItsOwnPricesNeedsNoSpot() {
    BreakEven breakEven = silver("90.00", PRICED, TEN_OUNCES);
    assertThat(breakEven.factor()).isEmpty();
    assertThat(breakEven.sentence())
        .isEqualTo("the lot is worth its cost of 90.00 USD at any spot");
  }

  @Test
  void aLotWithoutMetalIsOutOfReach() {
    BreakEven breakEven = silver("150.00", PRICED);
    assertThat(breakEven.factor()).isEmpty();
    assertThat(breakEven.spot()).isEmpty();
    assertThat(breakEven.sentence())
        .isEqualTo(
            "no spot makes the lot worth its cost of 150.00 USD: at most 100.00, whatever the metal");
  }

  @Test
  void aLotOfGoldDoesNotWaitForSilver() {
    assertThat(silver("300.00", Piece.of(ounces(Metal.GOLD, "0.1"))).factor()).isEmpty();
  }

  @Test
  void anEmptyLotIsOutOfReach() {
    assertThat(silver("1.00").factor()).isEmpty();
    assertThat(silver("0.00").sentence()).contains("at any spot");
  }
}
