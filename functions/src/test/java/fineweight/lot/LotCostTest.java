package fineweight.lot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Premiums and taxes here are invented. */
class LotCostTest {
  private static BuyingTerms terms(String premium, String tax, boolean taxOnPostage) {
    return new BuyingTerms(
        new BigDecimal(premium), new BigDecimal(tax), Money.parse("USD 12.00"), taxOnPostage);
  }

  @Test
  void premiumAndTaxComeOnTopOfThePrice() {
    LotCost cost = terms("20", "8.25", false).at(Money.parse("USD 310.00"));
    assertThat(cost.premium()).isEqualTo(Money.parse("USD 62.00"));
    assertThat(cost.tax()).isEqualTo(Money.parse("USD 30.69"));
    assertThat(cost.total()).isEqualTo(Money.parse("USD 414.69"));
  }

  @Test
  void theTaxFallsOnPostageOnlyWhereSaid() {
    LotCost cost = terms("0", "10", true).at(Money.parse("USD 100.00"));
    assertThat(cost.tax()).isEqualTo(Money.parse("USD 11.20"));
    assertThat(terms("0", "10", false).at(Money.parse("USD 100.00")).tax())
        .isEqualTo(Money.parse("USD 10.00"));
  }

  @Test
  void eachPartIsRoundedHalfUpToTheCent() {
    LotCost cost = terms("12.5", "0", false).at(Money.parse("USD 0.04"));
    assertThat(cost.premium()).isEqualTo(Money.parse("USD 0.01"));
  }

  @Test
  void aPlainLotCostsItsPrice() {
    Money price = Money.parse("USD 75.00");
    assertThat(LotCost.plain(price).total()).isEqualTo(price);
    assertThat(BuyingTerms.none(CurrencyUnit.USD).at(price)).isEqualTo(LotCost.plain(price));
  }

  @Test
  void refusesNegativeFigures() {
    assertThatThrownBy(() -> terms("-1", "0", false))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("the buyer's premium");
    assertThatThrownBy(() -> terms("0", "-1", false))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("the tax");
    assertThatThrownBy(
            () ->
                new BuyingTerms(BigDecimal.ZERO, BigDecimal.ZERO, Money.parse("USD -1.00"), false))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("postage");
    assertThatThrownBy(() -> LotCost.plain(Money.parse("USD -1.00")))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
