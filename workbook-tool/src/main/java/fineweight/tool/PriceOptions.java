package fineweight.tool;

import fineweight.clue.word.NumberText;
import fineweight.feed.PriceFeed;
import fineweight.metal.Metal;
import fineweight.settings.FeedSettings;
import fineweight.settings.SettingException;
import fineweight.settings.SettingsPlace;
import fineweight.settings.SpotFile;
import fineweight.settings.SpotText;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.joda.money.CurrencyUnit;
import picocli.CommandLine.Option;

/**
 * The options that give prices; an option counts before the file, the file before what is fetched,
 * and that before the workbook's own spot sheet.
 */
final class PriceOptions {
  private static final BigDecimal MOST = new BigDecimal("99");

  @Option(
      names = "--spot",
      paramLabel = "METAL=PRICE[/UNIT]",
      description = {
        "Price of a metal, such as XAG=30.00 or Cu=9500/t.",
        "Unit: ozt (taken where none is given for XAU, XAG, XPT, XPD), g, kg, t, lb."
      })
  private List<String> spot = new ArrayList<>();

  @Option(
      names = "--spot-file",
      paramLabel = "FILE",
      description = "JSON file with date, currency and prices.")
  private Path file;

  @Option(
      names = "--fetch",
      description = {
        "Fetch today's prices from the address in the settings; nothing is fetched without this.",
        "--spot and --spot-file count before them."
      })
  private boolean fetch;

  @Option(
      names = "--settings",
      paramLabel = "FILE",
      description = "The settings file; settings.json in your folder of settings if absent.")
  private Path settings;

  @Option(
      names = "--spot-date",
      paramLabel = "YYYY-MM-DD",
      description = "Date of the prices given; today if absent.")
  private String date;

  @Option(
      names = "--currency",
      paramLabel = "CODE",
      description = "ISO 4217 code of the prices; USD if absent.")
  private String currency;

  @Option(
      names = "--wear",
      paramLabel = "PERCENT",
      description = "Per cent of the metal to take off for wear, 0 to 99.")
  private String wear;

  /**
   * @param today the day taken where none is given
   * @param warnings takes sentences about prices that were fetched
   * @throws SettingException if an option cannot be used, or no prices can be fetched
   */
  SpotPrices prices(LocalDate today, Consumer<String> warnings) throws SettingException {
    Optional<SpotPrices> fromFile =
        file == null ? Optional.empty() : Optional.of(SpotFile.read(file));
    Optional<SpotPrices> fetched = fetch ? Optional.of(fetched(today, warnings)) : Optional.empty();
    Optional<SpotPrices> base = fromFile.or(() -> fetched);
    CurrencyUnit unit =
        currency != null
            ? SpotFile.currency(currency, "--currency")
            : base.map(SpotPrices::currency).orElse(CurrencyUnit.USD);
    if (file != null) {
      refuseOtherCurrency(fromFile, unit, file.toString());
    }
    refuseOtherCurrency(fetched, unit, "the address in the settings");
    Map<Metal, SpotPrice> prices = new EnumMap<>(Metal.class);
    fetched.ifPresent(read -> prices.putAll(read.prices()));
    fromFile.ifPresent(read -> prices.putAll(read.prices()));
    for (String text : spot) {
      SpotPrice price = SpotText.parse(text, unit);
      prices.put(price.metal(), price);
    }
    LocalDate day =
        date != null
            ? day()
            : base.filter(read -> spot.isEmpty()).map(SpotPrices::date).orElse(today);
    return new SpotPrices(unit, day, prices);
  }

  private SpotPrices fetched(LocalDate today, Consumer<String> warnings) throws SettingException {
    Path place = settings != null ? settings : SettingsPlace.ofThisProcess();
    return new PriceFeed(FeedSettings.read(place), warnings).prices(today);
  }

  private static void refuseOtherCurrency(
      Optional<SpotPrices> prices, CurrencyUnit unit, String where) throws SettingException {
    if (prices.isPresent() && !prices.get().currency().equals(unit)) {
      throw new SettingException(
          "--currency "
              + unit
              + " does not fit "
              + where
              + ", whose prices are in "
              + prices.get().currency());
    }
  }

  private LocalDate day() throws SettingException {
    try {
      return LocalDate.parse(date);
    } catch (DateTimeParseException unusable) {
      throw new SettingException(
          "--spot-date: \"" + date + "\" is no date; write it as 2026-11-25");
    }
  }

  boolean currencyGiven() {
    return currency != null || file != null || fetch;
  }

  /** The share lost by wear, if it was given. */
  Optional<BigDecimal> wear() throws SettingException {
    if (wear == null) {
      return Optional.empty();
    }
    Optional<BigDecimal> percent = NumberText.read(wear);
    if (percent.isEmpty() || percent.get().signum() < 0 || percent.get().compareTo(MOST) > 0) {
      throw new SettingException("--wear is a percentage from 0 to 99, not \"" + wear + "\"");
    }
    return percent.map(share -> share.movePointLeft(2));
  }
}
