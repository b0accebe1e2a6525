package fineweight.lot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.valuation.Samples;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.joda.money.BigMoney;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class CostSharesTest {
  private static List<Money> shares(String cost, String... worths) {
    return CostShares.byWorth(
            Money.parse("USD " + cost), worths(worths), Collections.nCopies(worths.length, 1))
        .shares();
  }

  private static List<BigMoney> worths(String... worths) {
    return Arrays.stream(worths).map(Samples::usd).toList();
  }

  private static List<Money> usd(String... amounts) {
    return Arrays.stream(amounts).map(amount -> Money.parse("USD " + amount)).toList();
  }

  /**
   * Source: SuperfastCPA, "What is the Relative Sales Value Method?": joint cost 10,000, sales
   * values 15,000 and 5,000.
   */
  @Test
  void sharesAJointCostByRelativeSalesValue() {
    assertThat(shares("10000.00", "15000", "5000")).isEqualTo(usd("7500.00", "2500.00"));
  }

  /**
   * Source: Chron Small Business, "How to Calculate Joint Costs Using Relative Sales Value Method":
   * 200 for items worth 200, 250 and 350; the first carries a quarter, 50.
   */
  @Test
  void sharesTheCostOfThreeItems() {
    assertThat(shares("200.00", "200", "250", "350")).isEqualTo(usd("50.00", "62.50", "87.50"));
  }

  /**
   * Source: the same text in its older form: 10,000 for values of 9,000, 8,000 and 5,000; it gives
   * the shares to the hundred: 4,100, 3,600 and 2,300.
   */
  @Test
  void theSharesOfTheCookieFactoryAgreeToTheHundred() {
    List<Money> shares = shares("10000.00", "9000", "8000", "5000");
    assertThat(shares).isEqualTo(usd("4090.91", "3636.36", "2272.73"));
    assertThat(Money.total(shares)).isEqualTo(Money.parse("USD 10000.00"));
  }

  @Test
  void nothingOfWorthFallsBackToEqualSharesAndSaysSo() {
    CostShares shares =
        CostShares.byWorth(Money.parse("USD 10.00"), worths("0", "0"), List.of(1, 3));
    assertThat(shares.shares()).isEqualTo(usd("2.50", "7.50"));
    assertThat(shares.way()).isEqualTo(CostShares.Way.EQUALLY);
    assertThat(shares.sentence()).contains("because nothing in the lot has a worth");
  }

  @Test
  void sharesEquallyByPieceNotByRow() {
    CostShares shares = CostShares.equally(Money.parse("USD 10.00"), List.of(1, 2, 3));
    assertThat(shares.shares()).isEqualTo(usd("1.67", "3.33", "5.00"));
    assertThat(shares.way()).isEqualTo(CostShares.Way.EQUALLY);
  }

  @Test
  void sharesByFineWeightOfThePreciousMetalsOnly() {
    FineContent copper = Samples.ounces(Metal.COPPER, "500");
    CostShares shares =
        CostShares.byFineWeight(
            Money.parse("USD 90.00"),
            List.of(Samples.ounces(Metal.SILVER, "1"), Samples.ounces(Metal.SILVER, "2"), copper),
            List.of(1, 1, 1));
    assertThat(shares.shares()).isEqualTo(usd("30.00", "60.00", "0.00"));
    assertThat(shares.sentence()).isEqualTo("shared by fine weight");
  }

  @Test
  void warnsWhereFineWeightMixesMetals() {
    CostShares shares =
        CostShares.byFineWeight(
            Money.parse("USD 90.00"),
            List.of(Samples.ounces(Metal.SILVER, "1"), Samples.ounces(Metal.GOLD, "1")),
            List.of(1, 1));
    assertThat(shares.shares()).isEqualTo(usd("45.00", "45.00"));
    assertThat(shares.sentence()).contains("by worth is fairer");
  }

  @Test
  void aLotWithoutPreciousMetalIsSharedEqually() {
    CostShares shares =
        CostShares.byFineWeight(
            Money.parse("USD 3.00"), List.of(FineContent.NONE, FineContent.NONE), List.of(1, 2));
    assertThat(shares.shares()).isEqualTo(usd("1.00", "2.00"));
    assertThat(shares.way()).isEqualTo(CostShares.Way.EQUALLY);
  }

  @Test
  void refusesWhatCannotBeShared() {
    assertThatThrownBy(() -> shares("-1.00", "1")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> shares("1.00", "1", "-1"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> CostShares.equally(Money.parse("USD 1.00"), List.of(1, 0)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> CostShares.equally(Money.parse("USD 1.00"), List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () -> CostShares.byWorth(Money.parse("USD 1.00"), worths("1"), List.of(1, 1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("1 rows, but 2 counts");
  }

  @Test
  void fineWeightsNeedACountEach() {
    assertThatThrownBy(
            () ->
                CostShares.byFineWeight(
                    Money.parse("USD 1.00"),
                    List.of(Samples.ounces(Metal.SILVER, "1")),
                    List.of(1, 2)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("1 rows, but 2 counts");
  }
}
