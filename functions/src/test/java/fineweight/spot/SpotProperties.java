package fineweight.spot;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.Mass;
import fineweight.quantity.MassUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.joda.money.CurrencyUnit;

class SpotProperties {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  @Property
  void aHigherPriceNeverLowersMelt(
      @ForAll @BigRange(min = "0.01", max = "9999") @Scale(2) BigDecimal price,
      @ForAll @BigRange(min = "0", max = "999") @Scale(2) BigDecimal more,
      @ForAll @BigRange(min = "0", max = "1000") @Scale(4) BigDecimal silver,
      @ForAll @BigRange(min = "0", max = "1000") @Scale(4) BigDecimal gold) {
    FineContent content =
        new FineContent(Map.of(Metal.SILVER, Mass.ofGrams(silver), Metal.GOLD, Mass.ofGrams(gold)));
    BigDecimal low = prices(price).melt(content).getAmount();
    BigDecimal high = prices(price.add(more)).melt(content).getAmount();
    assertThat(high).isGreaterThanOrEqualTo(low);
    boolean gains = more.signum() > 0 && silver.signum() > 0;
    assertThat(high.compareTo(low) > 0).isEqualTo(gains);
  }

  private static SpotPrices prices(BigDecimal silver) {
    return SpotPrices.of(
        CurrencyUnit.USD,
        DAY,
        List.of(
            new SpotPrice(Metal.SILVER, silver, CurrencyUnit.USD, MassUnit.TROY_OUNCE),
            new SpotPrice(
                Metal.GOLD, new BigDecimal("2500"), CurrencyUnit.USD, MassUnit.TROY_OUNCE)));
  }

  /** The same price in another unit is worth the same, to far below a cent. */
  @Property
  void theUnitOfAPriceDoesNotMatter(
      @ForAll @BigRange(min = "0.01", max = "9999") @Scale(2) BigDecimal perOunce,
      @ForAll @BigRange(min = "0.01", max = "9999") @Scale(3) BigDecimal grams,
      @ForAll MassUnit unit) {
    BigDecimal perUnit =
        perOunce
            .multiply(unit.grams())
            .divide(MassUnit.TROY_OUNCE.grams(), 40, RoundingMode.HALF_EVEN);
    SpotPrice ounce = new SpotPrice(Metal.SILVER, perOunce, CurrencyUnit.USD, MassUnit.TROY_OUNCE);
    SpotPrice other = new SpotPrice(Metal.SILVER, perUnit, CurrencyUnit.USD, unit);
    Mass mass = Mass.ofGrams(grams);
    BigDecimal off =
        ounce.valueOf(mass).getAmount().subtract(other.valueOf(mass).getAmount()).abs();
    assertThat(off).isLessThan(new BigDecimal("1E-20"));
    assertThat(other.perTroyOunce().subtract(perOunce).abs()).isLessThan(new BigDecimal("1E-20"));
  }

  @Property
  void aMetalWithoutAPriceIsNamed(
      @ForAll @BigRange(min = "0.01", max = "99") @Scale(2) BigDecimal grams) {
    FineContent platinum = new FineContent(Map.of(Metal.PLATINUM, Mass.ofGrams(grams)));
    assertThat(prices(BigDecimal.TEN).missingFor(platinum)).containsExactly(Metal.PLATINUM);
    assertThat(prices(BigDecimal.TEN).melt(platinum).isZero()).isTrue();
  }
}
