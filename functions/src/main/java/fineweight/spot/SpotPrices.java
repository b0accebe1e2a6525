package fineweight.spot;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.Mass;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * The prices of one day, all in one currency, at most one per metal. Immutable.
 *
 * @param currency the one currency of all prices
 * @param date the day the prices are of
 * @param prices by metal
 */
public record SpotPrices(CurrencyUnit currency, LocalDate date, Map<Metal, SpotPrice> prices) {
  /**
   * @throws IllegalArgumentException if a price is in another currency
   */
  public SpotPrices {
    Objects.requireNonNull(currency, "currency");
    Objects.requireNonNull(date, "date");
    Map<Metal, SpotPrice> byMetal = new EnumMap<>(Metal.class);
    for (SpotPrice price : prices.values()) {
      if (!price.currency().equals(currency)) {
        throw new IllegalArgumentException(
            "the price of "
                + price.metal().word()
                + " is in "
                + price.currency()
                + ", the others in "
                + currency);
      }
      byMetal.put(price.metal(), price);
    }
    prices = Collections.unmodifiableMap(byMetal);
  }

  /**
   * @throws IllegalArgumentException if a metal is priced twice or a price is in another currency
   */
  public static SpotPrices of(CurrencyUnit currency, LocalDate date, Collection<SpotPrice> prices) {
    Map<Metal, SpotPrice> byMetal = new EnumMap<>(Metal.class);
    for (SpotPrice price : prices) {
      if (byMetal.put(price.metal(), price) != null) {
        throw new IllegalArgumentException(price.metal().word() + " is priced twice");
      }
    }
    return new SpotPrices(currency, date, byMetal);
  }

  public Optional<SpotPrice> of(Metal metal) {
    return Optional.ofNullable(prices.get(metal));
  }

  /** The precious metals of the content that have no price here. */
  public Set<Metal> missingFor(FineContent content) {
    Set<Metal> missing = EnumSet.noneOf(Metal.class);
    for (Metal metal : content.masses().keySet()) {
      if (metal.isPrecious() && !prices.containsKey(metal)) {
        missing.add(metal);
      }
    }
    return missing;
  }

  /**
   * The value of every priced metal of the content, unrounded. Metals without a price count
   * nothing.
   */
  public BigMoney melt(FineContent content) {
    BigMoney sum = BigMoney.zero(currency);
    for (Map.Entry<Metal, Mass> entry : content.masses().entrySet()) {
      SpotPrice price = prices.get(entry.getKey());
      if (price != null) {
        sum = sum.plus(price.valueOf(entry.getValue()));
      }
    }
    return sum;
  }
}
