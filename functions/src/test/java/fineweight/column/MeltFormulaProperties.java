package fineweight.column;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.Mass;
import fineweight.quantity.MassUnit;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.joda.money.CurrencyUnit;

class MeltFormulaProperties {
  private static final BigDecimal OUNCE = new BigDecimal("31.1034768");

  @Property
  void theResultIsThePlainSumRoundedOnce(
      @ForAll @BigRange(min = "0.001", max = "3000") @Scale(5) BigDecimal silver,
      @ForAll @BigRange(min = "0.001", max = "300") @Scale(5) BigDecimal gold,
      @ForAll @BigRange(min = "0.01", max = "200") @Scale(2) BigDecimal silverPrice,
      @ForAll @BigRange(min = "1", max = "9000") @Scale(2) BigDecimal goldPrice,
      @ForAll @BigRange(min = "0", max = "0.98") @Scale(4) BigDecimal wear) {
    MeltFormula formula = new MeltFormula(prices(silverPrice, goldPrice), wear);
    BigDecimal exact =
        silver
            .multiply(silverPrice)
            .add(gold.multiply(goldPrice))
            .multiply(BigDecimal.ONE.subtract(wear))
            .divide(OUNCE, 60, RoundingMode.HALF_EVEN);
    assertThat(formula.result(content(silver, gold)))
        .hasValueSatisfying(
            melt -> assertThat(melt).isEqualByComparingTo(exact.setScale(2, RoundingMode.HALF_UP)));
  }

  private static SpotPrices prices(BigDecimal silver, BigDecimal gold) {
    return SpotPrices.of(
        CurrencyUnit.USD,
        LocalDate.of(2026, 11, 25),
        List.of(
            new SpotPrice(Metal.SILVER, silver, CurrencyUnit.USD, MassUnit.TROY_OUNCE),
            new SpotPrice(Metal.GOLD, gold, CurrencyUnit.USD, MassUnit.TROY_OUNCE)));
  }

  private static FineContent content(BigDecimal silver, BigDecimal gold) {
    return new FineContent(
        Map.of(Metal.SILVER, Mass.ofGrams(silver), Metal.GOLD, Mass.ofGrams(gold)));
  }

  /** What a cell holds of the ounces is enough for the cent, ties apart. */
  @Property
  void theCellsOuncesGiveTheSameCent(
      @ForAll @BigRange(min = "0.001", max = "3000") @Scale(5) BigDecimal silver,
      @ForAll @BigRange(min = "0.01", max = "200") @Scale(2) BigDecimal price) {
    FineContent content = new FineContent(Map.of(Metal.SILVER, Mass.ofGrams(silver)));
    BigDecimal cell = MeltFormula.ounces(content.troyOunces(Metal.SILVER));
    assertThat(cell.precision()).isLessThanOrEqualTo(15);
    BigDecimal fromCell = cell.multiply(price);
    BigDecimal exact = content.troyOunces(Metal.SILVER).multiply(price);
    assertThat(fromCell.subtract(exact).abs()).isLessThan(new BigDecimal("1E-8"));
  }

  @Example
  void theFormulaNamesPricesAndWear() {
    MeltFormula formula =
        new MeltFormula(prices(new BigDecimal(30), new BigDecimal(2500)), BigDecimal.ZERO);
    FineContent both = content(new BigDecimal("31.1034768"), new BigDecimal("62.2069536"));
    assertThat(formula.ofCells(both, Map.of(Metal.GOLD, "N7", Metal.SILVER, "O7")))
        .isEqualTo("ROUND((N7*Fineweight_XAU+O7*Fineweight_XAG)*(1-Fineweight_wear),2)");
    assertThat(formula.ofConstants(both))
        .isEqualTo("ROUND((2*Fineweight_XAU+1*Fineweight_XAG)*(1-Fineweight_wear),2)");
  }
}
