package fineweight.sheet.worth;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.MassUnit;
import fineweight.sheet.coin.Coin;
import fineweight.sheet.coin.MetalArgument;
import fineweight.sheet.function.Argument;
import fineweight.sheet.function.Given;
import fineweight.sheet.function.Parameter;
import fineweight.sheet.function.UnusableArgument;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * The spot prices that an argument gives: one number for the coin's own metal, a text such as
 * {@code XAG=30; Cu=9500/t}, or an area of two columns, metal and price.
 */
final class SpotArgument {
  static final Parameter SPOT =
      Parameter.needed(
          "spot",
          "money",
          "The price: a number for a troy ounce of the coin's main metal; a text such as XAG=30;"
              + " Cu=9500/t; or two columns with metals and prices a troy ounce");

  /** Cells have numbers, not money: any currency of two places does, and it is never shown. */
  static final CurrencyUnit TWO_PLACES = CurrencyUnit.USD;

  private SpotArgument() {}

  /**
   * The prices for one coin.
   *
   * @throws UnusableArgument if the argument is no price, or leaves the coin's main metal without
   *     one
   */
  static SpotPrices of(Given given, Collection<Coin> coins) {
    Argument argument = given.at("spot");
    Map<Metal, SpotPrice> prices = new EnumMap<>(Metal.class);
    if (argument instanceof Argument.Area area && area.rows().get(0).size() == 2) {
      area.rows().forEach(row -> row(row).ifPresent(price -> add(prices, price)));
    } else if (argument.words().contains("=")) {
      addAll(prices, argument.words());
    } else {
      BigDecimal price = given.positive("spot");
      for (Coin coin : coins) {
        coin.contents()
            .forEach(content -> main(content).ifPresent(m -> prices.put(m, ounce(m, price))));
      }
      if (prices.size() > 1) {
        throw new UnusableArgument(
            "spot", "one number cannot be the price of several metals; write XAU=...; XAG=...");
      }
    }
    SpotPrices spots = prices(prices.values());
    coins.forEach(coin -> coin.contents().forEach(content -> requireMain(content, spots)));
    return spots;
  }

  /** A price and those of a text beside it. */
  static SpotPrices with(SpotPrice first, String others) {
    Map<Metal, SpotPrice> prices = new EnumMap<>(Metal.class);
    add(prices, first);
    addAll(prices, others);
    return prices(prices.values());
  }

  private static void addAll(Map<Metal, SpotPrice> prices, String text) {
    for (String entry : text.split("[;\\s]+", -1)) {
      if (!entry.isEmpty()) {
        add(prices, entry(entry));
      }
    }
  }

  private static SpotPrices prices(Collection<SpotPrice> prices) {
    return SpotPrices.of(TWO_PLACES, LocalDate.EPOCH, List.copyOf(prices));
  }

  static SpotPrice ounce(Metal metal, BigDecimal price) {
    return new SpotPrice(metal, price, TWO_PLACES, MassUnit.TROY_OUNCE);
  }

  /** The precious metal of which there is most. */
  static Optional<Metal> main(FineContent content) {
    return content.masses().entrySet().stream()
        .filter(entry -> entry.getKey().isPrecious())
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey);
  }

  private static void requireMain(FineContent content, SpotPrices spots) {
    Optional<Metal> main = main(content);
    if (main.isPresent() && spots.of(main.get()).isEmpty()) {
      throw new UnusableArgument("spot", "no price given for " + main.get().word());
    }
  }

  private static void add(Map<Metal, SpotPrice> prices, SpotPrice price) {
    if (prices.put(price.metal(), price) != null) {
      throw new UnusableArgument("spot", price.metal().word() + " is priced twice");
    }
  }

  private static Optional<SpotPrice> row(List<Argument> row) {
    if (row.get(0).saysNothing() || row.get(1).saysNothing()) {
      return Optional.empty();
    }
    Metal metal = metal(row.get(0).words());
    return Given.number("spot", row.get(1))
        .map(number -> price(metal, number, MassUnit.TROY_OUNCE));
  }

  private static SpotPrice entry(String entry) {
    List<String> sides = new ArrayList<>(List.of(entry.split("=", 2)));
    if (sides.size() != 2) {
      throw new UnusableArgument(
          "spot", "expected such as XAG=30, found \"" + Given.shortened(entry) + "\"");
    }
    Metal metal = metal(sides.get(0));
    String[] parts = sides.get(1).split("/", 2);
    BigDecimal number =
        Given.number("spot", new Argument.Text(parts[0]))
            .orElseThrow(() -> new UnusableArgument("spot", "no price given for " + metal.word()));
    return price(metal, number, unit(metal, parts.length > 1 ? parts[1] : ""));
  }

  private static MassUnit unit(Metal metal, String sign) {
    if (sign.isEmpty() && metal.isPrecious()) {
      return MassUnit.TROY_OUNCE;
    }
    for (MassUnit unit : MassUnit.values()) {
      if (unit.symbol().equalsIgnoreCase(sign)) {
        return unit;
      }
    }
    throw new UnusableArgument(
        "spot",
        sign.isEmpty()
            ? "the price of " + metal.word() + " needs its unit, such as /t, /kg or /lb"
            : "\"" + Given.shortened(sign) + "\" is no unit; use ozt, g, kg, t or lb");
  }

  private static SpotPrice price(Metal metal, BigDecimal number, MassUnit unit) {
    if (number.signum() <= 0) {
      throw new UnusableArgument("spot", "the price of " + metal.word() + " must be above zero");
    }
    return new SpotPrice(metal, number, TWO_PLACES, unit);
  }

  private static Metal metal(String words) {
    return MetalArgument.of(words)
        .orElseThrow(
            () -> new UnusableArgument("spot", "\"" + Given.shortened(words) + "\" is no metal"));
  }
}
