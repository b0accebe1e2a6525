package fineweight.valuation;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.Mass;
import fineweight.quantity.MassUnit;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/** Coins and invented spot prices that several tests value. */
public final class Samples {
  /** Invented: 30 USD and 2500 USD a troy ounce, copper 9000 USD a tonne. */
  public static final SpotPrices SPOTS = spots("30", "2500");

  /** Half dollar of 12.5 g, 900 fine: Coinage Act of 1873, section 15. */
  public static final FineContent HALF_DOLLAR = silver("11.25");

  /** Dime of 2.5 g, 900 fine: the same section. */
  public static final FineContent DIME = silver("2.25");

  private Samples() {}

  public static SpotPrices spots(String silver, String gold) {
    return SpotPrices.of(
        CurrencyUnit.USD,
        LocalDate.of(2026, 1, 2),
        List.of(
            perOunce(Metal.SILVER, silver),
            perOunce(Metal.GOLD, gold),
            new SpotPrice(Metal.COPPER, new BigDecimal("9000"), CurrencyUnit.USD, MassUnit.TONNE)));
  }

  public static SpotPrice perOunce(Metal metal, String amount) {
    return new SpotPrice(metal, new BigDecimal(amount), CurrencyUnit.USD, MassUnit.TROY_OUNCE);
  }

  public static FineContent silver(String grams) {
    return new FineContent(Map.of(Metal.SILVER, Mass.ofGrams(grams)));
  }

  /** So many whole ounces of a metal, so that figures can be followed by eye. */
  public static FineContent ounces(Metal metal, String troyOunces) {
    return new FineContent(Map.of(metal, Mass.ofTroyOunces(new BigDecimal(troyOunces))));
  }

  public static BigMoney usd(String amount) {
    return BigMoney.of(CurrencyUnit.USD, new BigDecimal(amount));
  }
}
