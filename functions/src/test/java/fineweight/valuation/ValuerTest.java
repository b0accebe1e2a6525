package fineweight.valuation;

import static fineweight.valuation.Samples.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.grade.Condition;
import fineweight.grade.Grade;
import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.Mass;
import java.util.List;
import java.util.Map;
import org.joda.money.BigMoney;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class ValuerTest {
  private static final Valuer VALUER = new Valuer(Samples.SPOTS);
  private static final Piece DIME = Piece.of(Samples.DIME).withFace(usd("0.10"));
  private static final FineContent CLAD =
      new FineContent(Map.of(Metal.COPPER, Mass.ofGrams("2.079"), Metal.NICKEL, Mass.ofGrams("1")));

  private static Worth worth(Piece piece) {
    return VALUER.value(piece).worth();
  }

  /**
   * Ten dimes of 2.5 g, 900 fine (Coinage Act of 1873, section 15) hold 22.5 g, that is 0.723392
   * ounces (31.1034768 g each, NIST Handbook 44): 21.70 at 30 an ounce.
   */
  @Test
  void aDollarOfDimesIsWorthItsMetal() {
    Valuation valuation = VALUER.value(DIME.times(10));
    assertThat(valuation.content().of(Metal.SILVER)).isEqualTo(Mass.ofGrams("22.5"));
    assertThat(valuation.worth().atCell()).isEqualTo(Money.parse("USD 21.70"));
    assertThat(valuation.worth().basis()).isEqualTo(Basis.METAL);
    assertThat(valuation.worth().sentence())
        .isEqualTo("metal 21.70 USD at 100 % of melt, above its face value of 1.00 USD");
    assertThat(valuation.melt().isEqual(valuation.worth().money())).isTrue();
  }

  @Test
  void wearTakesMetalAway() {
    Valuation valuation = VALUER.value(DIME.times(10).worn(Wear.tradeAllowance()));
    assertThat(valuation.content().troyOunces(Metal.SILVER))
        .isBetween(new java.math.BigDecimal("0.7149"), new java.math.BigDecimal("0.7151"));
    assertThat(valuation.worth().atCell()).isEqualTo(Money.parse("USD 21.45"));
  }

  @Test
  void faceCountsWhereItIsHigherThanTheMetal() {
    Worth worth = worth(Piece.of(CLAD).withFace(usd("0.25")).times(4));
    assertThat(worth.money().isEqual(usd("1"))).isTrue();
    assertThat(worth.basis()).isEqualTo(Basis.FACE);
    assertThat(worth.sentence()).isEqualTo("face value 1.00 USD, its metal would bring 0.07 USD");
  }

  @Test
  void faceCountsWhereThePayoutIsLowEnough() {
    Valuer low =
        new Valuer(
            Samples.SPOTS,
            Payouts.atMelt().with(Metal.SILVER, Payout.percent("4")),
            DamageRule.LOWERS_TO_METAL);
    assertThat(low.value(DIME).worth().basis()).isEqualTo(Basis.FACE);
    assertThat(VALUER.value(DIME).worth().basis()).isEqualTo(Basis.METAL);
  }

  @Test
  void anOwnPriceComesBeforeMetalEvenWhereItIsLower() {
    Worth worth = worth(DIME.times(2).priced(OwnPrice.listed(usd("1.50"), "list of May 2025")));
    assertThat(worth.money().isEqual(usd("3"))).isTrue();
    assertThat(worth.basis()).isEqualTo(Basis.OWN_PRICE);
    assertThat(worth.sentence()).isEqualTo("your price list: 1.50 USD each (list of May 2025)");
  }

  @Test
  void damageTakesThePriceOfTheListAway() {
    Piece holed =
        DIME.priced(OwnPrice.listed(usd("40"), ""))
            .in(Condition.certified(Grade.of(45)).withDamage());
    Worth worth = worth(holed);
    assertThat(worth.basis()).isEqualTo(Basis.METAL);
    assertThat(worth.atCell()).isEqualTo(Money.parse("USD 2.17"));
    assertThat(worth.sentence()).endsWith("; damaged, so the listed price does not count");
  }

  @Test
  void damageTakesNothingAwayWhereThePersonSaysOtherwise() {
    Condition damaged = Condition.UNKNOWN.withDamage();
    Piece stated = DIME.priced(OwnPrice.stated(usd("12"))).in(damaged);
    assertThat(worth(stated).money().isEqual(usd("12"))).isTrue();
    assertThat(worth(stated).basis()).isEqualTo(Basis.STATED);

    Piece listed = DIME.priced(OwnPrice.listed(usd("40"), "")).in(damaged);
    Valuer lenient = new Valuer(Samples.SPOTS, Payouts.atMelt(), DamageRule.LIST_COUNTS);
    assertThat(lenient.value(listed).worth().money().isEqual(usd("40"))).isTrue();
  }

  @Test
  void aPreciousMetalWithoutASpotPriceIsNamed() {
    Valuation valuation = VALUER.value(Piece.of(Samples.ounces(Metal.PLATINUM, "1")));
    assertThat(valuation.unpriced()).containsExactly(Metal.PLATINUM);
    assertThat(valuation.worth().basis()).isEqualTo(Basis.NONE);
    assertThat(valuation.worth().money().isZero()).isTrue();
    assertThat(valuation.worth().sentence())
        .isEqualTo("no price and no priced metal; no price given for platinum, not counted");
  }

  @Test
  void aPieceOfNothingKnownIsWorthNothingKnown() {
    assertThat(worth(Piece.of(FineContent.NONE)).basis()).isEqualTo(Basis.NONE);
    assertThat(worth(Piece.of(FineContent.NONE).withFace(usd("0"))).basis()).isEqualTo(Basis.NONE);
    assertThat(worth(Piece.of(FineContent.NONE).withFace(usd("1"))).sentence())
        .isEqualTo("face value 1.00 USD");
  }

  @Test
  void refusesOtherCurrencies() {
    assertThatThrownBy(() -> worth(DIME.withFace(BigMoney.parse("CAD 0.10"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("the face value is in CAD");
    assertThatThrownBy(() -> worth(DIME.priced(OwnPrice.stated(BigMoney.parse("EUR 3")))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("the own price is in EUR");
  }

  @Test
  void theSameRulesCountAtOtherPrices() {
    Valuer doubled = VALUER.at(Samples.spots("60", "2500"));
    assertThat(doubled.value(DIME.times(10)).worth().atCell()).isEqualTo(Money.parse("USD 43.40"));
  }

  @Test
  void openRowsHaveALowestAndAHighestWorth() {
    Valuation none = VALUER.value(Piece.of(FineContent.NONE).withFace(usd("0.05")));
    Valuation war = VALUER.value(Piece.of(Samples.silver("1.75")).withFace(usd("0.05")));
    WorthRange range = WorthRange.among(List.of(war, none));
    assertThat(range.low()).isEqualTo(none);
    assertThat(range.high()).isEqualTo(war);
    assertThat(range.open()).isTrue();
    assertThat(WorthRange.settled(war).open()).isFalse();
    assertThat(WorthRange.among(List.of(war)).open()).isFalse();
    assertThatThrownBy(() -> WorthRange.among(List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new WorthRange(war, none, true))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void refusesWhatNoPieceCanBe() {
    assertThatThrownBy(() -> DIME.times(0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> DIME.withFace(usd("-1"))).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> OwnPrice.stated(usd("-1")))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new OwnPrice(usd("1"), Basis.METAL, ""))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void theRangeIsFoundWhereverItsEndsStand() {
    Valuation low = VALUER.value(Piece.of(Samples.silver("1")));
    Valuation middle = VALUER.value(Piece.of(Samples.silver("2")));
    Valuation high = VALUER.value(Piece.of(Samples.silver("3")));
    for (List<Valuation> order :
        List.of(
            List.of(low, middle, high),
            List.of(middle, low, high),
            List.of(middle, high, low),
            List.of(high, low, middle))) {
      WorthRange range = WorthRange.among(order);
      assertThat(range.low()).isSameAs(low);
      assertThat(range.high()).isSameAs(high);
    }
  }

  @Test
  void ofEqualCandidatesTheFirstIsShown() {
    Valuation one = VALUER.value(Piece.of(Samples.silver("1")));
    Valuation same = VALUER.value(Piece.of(Samples.silver("1")).inClass("other"));
    WorthRange range = WorthRange.among(List.of(one, same));
    assertThat(range.low()).isSameAs(one);
    assertThat(range.high()).isSameAs(one);
    assertThat(range.open()).isTrue();
  }

  @Test
  void knowsThePricesItValuesAt() {
    assertThat(VALUER.spots()).isEqualTo(Samples.SPOTS);
  }
}
