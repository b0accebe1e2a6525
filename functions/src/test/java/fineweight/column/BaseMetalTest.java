package fineweight.column;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.reading.ClueReader;
import fineweight.identification.CoinIdentifier;
import fineweight.metal.Metal;
import fineweight.quantity.MassUnit;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import fineweight.standard.Standards;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/**
 * Base metals count where they are priced. The cent of 95 parts copper and 5 parts zinc weighs 3.11
 * g (31 U.S.C. 5112(a)(6), (b)), the five cents of 75 parts copper and 25 parts nickel 5 g
 * (5112(a)(5), (b)). The prices are invented.
 */
class BaseMetalTest {
  private static SpotPrices prices(SpotPrice... prices) {
    return SpotPrices.of(CurrencyUnit.USD, LocalDate.of(2026, 11, 25), List.of(prices));
  }

  private static SpotPrice price(Metal metal, String amount, MassUnit unit) {
    return new SpotPrice(metal, new BigDecimal(amount), CurrencyUnit.USD, unit);
  }

  private static Appraisal appraise(SpotPrices spot, String words, String count) {
    Lexicon lexicon = Lexicon.standard();
    Standards standards = Standards.catalogue();
    return new Appraiser(
            new ClueReader(lexicon),
            new CoinIdentifier(standards, lexicon, "US", 2027),
            spot,
            standards)
        .appraise(
            List.of(new Field(FieldRole.DESCRIPTION, words), new Field(FieldRole.COUNT, count)));
  }

  /** 1000 x 3.11 g x 0.95 = 2954.5 g of copper; at 10000 for a tonne 29.545, half up 29.55. */
  @Test
  void aCentIsWorthItsCopperWhereCopperIsPriced() {
    SpotPrices spot = prices(price(Metal.COPPER, "10000", MassUnit.TONNE));
    Appraisal cents = appraise(spot, "1975 cent", "1000");
    assertThat(cents.state()).isEqualTo(RowState.VALUED);
    assertThat(new MeltFormula(spot, BigDecimal.ZERO).result(cents.content()))
        .contains(new BigDecimal("29.55"));
    assertThat(String.join(" ", cents.notes())).contains("31 CFR part 82");
  }

  @Test
  void withoutAPriceOfCopperACentHasNothingToValue() {
    SpotPrices spot = prices(price(Metal.SILVER, "30", MassUnit.TROY_OUNCE));
    Appraisal cents = appraise(spot, "1975 cent", "1000");
    assertThat(cents.state()).isEqualTo(RowState.NOTHING);
    assertThat(new MeltFormula(spot, BigDecimal.ZERO).result(cents.content())).isEmpty();
  }

  /**
   * 200 x 5 g = 1 kg: 750 g of copper at 10 and 250 g of nickel at 20 for a kilogram: 7.50 + 5.00.
   */
  @Test
  void severalBaseMetalsAddUpWhateverTheUnitOfTheirPrice() {
    SpotPrices spot =
        prices(
            price(Metal.COPPER, "10", MassUnit.KILOGRAM),
            price(Metal.NICKEL, "20000", MassUnit.TONNE));
    Appraisal nickels = appraise(spot, "1990 nickel", "200");
    MeltFormula melt = new MeltFormula(spot, BigDecimal.ZERO);
    assertThat(melt.result(nickels.content())).contains(new BigDecimal("12.50"));
    assertThat(melt.ofCells(nickels.content(), Map.of()))
        .isEqualTo("ROUND((0.00075*Fineweight_Cu+0.00025*Fineweight_Ni)*(1-Fineweight_wear),2)");
  }
}
