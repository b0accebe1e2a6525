package fineweight.lot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.money.WantedGain;
import java.math.BigDecimal;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Premiums, taxes and margins are invented. */
class BidTest {
  private static final BuyingTerms NOTHING_BESIDE = BuyingTerms.none(CurrencyUnit.USD);

  private static Money usd(String amount) {
    return Money.parse("USD " + amount);
  }

  private static Money price(BuyingTerms terms, WantedGain wanted, String worth) {
    return Bid.of(terms, wanted, usd(worth), usd(worth)).low().orElseThrow().price();
  }

  private static BuyingTerms terms(String premium, String tax, String postage) {
    return new BuyingTerms(new BigDecimal(premium), new BigDecimal(tax), usd(postage), false);
  }

  @Test
  void wantingTheCostBackTheBidIsTheWorth() {
    assertThat(price(NOTHING_BESIDE, WantedGain.none(), "412.35")).isEqualTo(usd("412.35"));
  }

  /**
   * The figures of the accounting text (AccountingCoach): a thing that brings 10 with a margin of
   * 20 % or a markup of 25 % may cost 8.
   */
  @Test
  void marginAndMarkupOfTheTextLeadBackToTheSameCost() {
    assertThat(price(NOTHING_BESIDE, new WantedGain.Margin(new BigDecimal("20")), "10.00"))
        .isEqualTo(usd("8.00"));
    assertThat(price(NOTHING_BESIDE, new WantedGain.Markup(new BigDecimal("25")), "10.00"))
        .isEqualTo(usd("8.00"));
    assertThat(price(NOTHING_BESIDE, new WantedGain.Fixed(usd("2.00")), "10.00"))
        .isEqualTo(usd("8.00"));
  }

  /** 500 - 12 postage = 488; 488 / 1.20 / 1.05 = 387.30; its premium 77.46, its tax 23.24. */
  @Test
  void premiumTaxAndPostageAreLeftRoomFor() {
    Bid bid = Bid.of(terms("20", "5", "12.00"), WantedGain.none(), usd("500.00"), usd("500.00"));
    assertThat(bid.low().orElseThrow().price()).isEqualTo(usd("387.30"));
    assertThat(bid.low().orElseThrow().total()).isEqualTo(usd("500.00"));
    assertThat(bid.sentence())
        .isEqualTo(
            "at most 387.30 USD; with premium, tax and postage that is 500.00 USD and leaves the"
                + " cost back");
  }

  @Test
  void openPiecesGiveALowAndAHighBid() {
    Bid bid =
        Bid.of(NOTHING_BESIDE, new WantedGain.Margin(BigDecimal.TEN), usd("100.00"), usd("150.00"));
    assertThat(bid.low().orElseThrow().price()).isEqualTo(usd("90.00"));
    assertThat(bid.high().orElseThrow().price()).isEqualTo(usd("135.00"));
    assertThat(bid.sentence())
        .startsWith("at most 90.00 USD, or 135.00 USD if every open piece is the better one")
        .endsWith("leaves a margin of 10 % of the worth");
  }

  @Test
  void postageAloneMayBeTooMuch() {
    Bid none = Bid.of(terms("0", "0", "12.00"), WantedGain.none(), usd("5.00"), usd("11.99"));
    assertThat(none.low()).isEmpty();
    assertThat(none.high()).isEmpty();
    assertThat(none.sentence()).isEqualTo("no price leaves the cost back");

    Bid maybe = Bid.of(terms("0", "0", "12.00"), WantedGain.none(), usd("5.00"), usd("20.00"));
    assertThat(maybe.low()).isEmpty();
    assertThat(maybe.high().orElseThrow().price()).isEqualTo(usd("8.00"));
    assertThat(maybe.sentence()).startsWith("as little as nothing, at most 8.00 USD");
  }

  @Test
  void refusesWorthsTheWrongWayRound() {
    assertThatThrownBy(() -> Bid.of(NOTHING_BESIDE, WantedGain.none(), usd("2.00"), usd("1.00")))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Bid.of(NOTHING_BESIDE, WantedGain.none(), usd("-2.00"), usd("1.00")))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
