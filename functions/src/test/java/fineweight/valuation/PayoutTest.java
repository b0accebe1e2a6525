package fineweight.valuation;

import static fineweight.valuation.Samples.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import org.joda.money.BigMoney;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** All payouts here are invented. Two ounces of silver at 30 USD melt at 60 USD. */
class PayoutTest {
  private static final Piece TWO_OUNCES = Piece.of(Samples.ounces(Metal.SILVER, "2"));

  private static BigMoney worth(Piece piece, Payouts payouts) {
    return new Valuer(Samples.SPOTS, payouts, DamageRule.LOWERS_TO_METAL)
        .value(piece)
        .worth()
        .money();
  }

  private static BigMoney worth(Payout payout) {
    return worth(TWO_OUNCES, Payouts.atMelt().with(Metal.SILVER, payout));
  }

  @ParameterizedTest
  @CsvSource({"100, 60", "95, 57", "104.5, 62.70", "0, 0"})
  void aPercentageOfMeltMayExceedAHundred(String percent, String paid) {
    assertThat(worth(Payout.percent(percent)).isEqual(usd(paid))).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"-1.50, 57", "2, 64", "-31, 0"})
  void perOunceCountsEachFineOunceAndNeverPaysLessThanNothing(String money, String paid) {
    assertThat(worth(new Payout.PerOunce(usd(money))).isEqual(usd(paid))).isTrue();
  }

  @Test
  void perPieceCountsEachPieceOfTheRow() {
    Payouts payouts = Payouts.atMelt().with(Metal.SILVER, new Payout.PerPiece(usd("3")));
    assertThat(worth(TWO_OUNCES.times(4), payouts).isEqual(usd("252"))).isTrue();
  }

  @Test
  void aClassOfPiecesHasItsOwnPayout() {
    Payouts payouts =
        Payouts.atMelt()
            .with(Metal.SILVER, Payout.percent("90"))
            .with(Metal.SILVER, "bullion", Payout.percent("101"));
    assertThat(worth(TWO_OUNCES, payouts).isEqual(usd("54"))).isTrue();
    assertThat(worth(TWO_OUNCES.inClass("bullion"), payouts).isEqual(usd("60.60"))).isTrue();
    assertThat(worth(TWO_OUNCES.inClass("proof"), payouts).isEqual(usd("54"))).isTrue();
  }

  @Test
  void aMetalWithoutAPayoutCountsInFull() {
    Payouts silverOnly = Payouts.atMelt().with(Metal.SILVER, Payout.percent("90"));
    Map<Metal, fineweight.quantity.Mass> both = new HashMap<>();
    both.putAll(Samples.ounces(Metal.SILVER, "1").masses());
    both.putAll(Samples.ounces(Metal.GOLD, "0.1").masses());
    Piece electrum = Piece.of(new FineContent(both));
    assertThat(worth(electrum, silverOnly).isEqual(usd("277"))).isTrue();
    assertThat(
            new Valuer(Samples.SPOTS, silverOnly, DamageRule.LOWERS_TO_METAL)
                .value(electrum)
                .worth()
                .sentence())
        .isEqualTo("metal 277.00 USD at 100 % of melt for gold and 90 % of melt for silver");
  }

  @Test
  void refusesAPayoutInAnotherCurrency() {
    assertThatThrownBy(() -> worth(new Payout.PerOunce(BigMoney.parse("EUR 1"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("EUR");
    assertThatThrownBy(() -> worth(new Payout.PerPiece(BigMoney.parse("EUR 1"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("EUR");
  }

  @Test
  void refusesANegativePercentage() {
    assertThatThrownBy(() -> new Payout.PercentOfMelt(new BigDecimal("-1")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("-1");
  }

  @Test
  void isToldInWords() {
    assertThat(Payout.percent("95.0").words()).isEqualTo("95 % of melt");
    assertThat(new Payout.PerOunce(usd("-1.5")).words()).isEqualTo("melt minus 1.50 USD an ounce");
    assertThat(new Payout.PerPiece(usd("2")).words()).isEqualTo("melt plus 2.00 USD a piece");
  }
}
