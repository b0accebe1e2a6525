package fineweight.tool;

import fineweight.price.ExchangeRates;
import fineweight.refresh.own.OwnListWishes;
import fineweight.settings.SettingException;
import fineweight.valuation.QuotedPayout;
import fineweight.workbook.Workbooks;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The options that name lists of the collector's own: prices, payouts, exchange rates. */
final class OwnListOptions {
  @Option(
      names = "--prices",
      paramLabel = "SHEET|FILE",
      description = {
        "Your own price list: a sheet of the workbook, or a CSV file or workbook, with the headings",
        "Type, Year, Mint, Grade, Certified, Price, As of, Origin. A sheet that looks so is found by itself."
      })
  private String priceList;

  @Option(
      names = "--payouts",
      paramLabel = "SHEET|FILE",
      description = "What your buyer pays, with the headings Metal, Class, Payout.")
  private String payoutList;

  @Option(
      names = "--payout",
      paramLabel = "METAL[:CLASS]=PAYOUT",
      description = {
        "What your buyer pays for a metal: XAG=95%%, XAG:90%%=97%%, XAU=-15/ozt, XAG:bullion=+1.50/piece.",
        "A class is a fineness, or your own word in a column Payout class."
      })
  private List<String> payouts = new ArrayList<>();

  @Option(
      names = "--rates",
      paramLabel = "SHEET|FILE",
      description = "Exchange rates, with the headings Currency (ISO 4217 code), Rate, Date.")
  private String rateList;

  @Option(
      names = "--rate",
      paramLabel = "CODE=RATE",
      description = "One of a currency in that of the prices, such as EUR=1.08.")
  private List<String> rates = new ArrayList<>();

  /**
   * @throws SettingException if a single payout or rate cannot be used
   */
  OwnListWishes wishes(Workbooks workbooks) throws SettingException {
    List<OwnListWishes.Quote> quotes = new ArrayList<>();
    for (String text : payouts) {
      quotes.add(quote(text));
    }
    Map<String, BigDecimal> single = new HashMap<>();
    for (String text : rates) {
      addRate(single, text);
    }
    return new OwnListWishes(
        Optional.ofNullable(priceList),
        Optional.ofNullable(payoutList),
        Optional.ofNullable(rateList),
        quotes,
        single,
        Optional.of(workbooks));
  }

  private static OwnListWishes.Quote quote(String text) throws SettingException {
    int equals = text.indexOf('=');
    if (equals < 0) {
      throw new SettingException(
          "--payout: \"" + text + "\" has no equals sign; write it as XAG=95% or XAU=-15/ozt");
    }
    String[] key = text.substring(0, equals).split(":", 2);
    if (!OwnListWishes.isMetal(key[0])) {
      throw new SettingException(
          "--payout: \""
              + key[0]
              + "\" is no metal; use XAU, XAG, XPT, XPD or a symbol such as Cu");
    }
    try {
      return new OwnListWishes.Quote(
          key[0], key.length > 1 ? key[1] : "", QuotedPayout.read(text.substring(equals + 1)));
    } catch (IllegalArgumentException unusable) {
      throw new SettingException("--payout: " + unusable.getMessage());
    }
  }

  private static void addRate(Map<String, BigDecimal> single, String text) throws SettingException {
    String[] parts = text.split("=", 2);
    String code = parts[0].strip().toUpperCase(Locale.ROOT);
    boolean figure = parts.length == 2 && parts[1].strip().matches("\\d+(\\.\\d+)?");
    if (ExchangeRates.currency(code).isEmpty()
        || !figure
        || new BigDecimal(parts[1].strip()).signum() == 0) {
      throw new SettingException(
          "--rate: \""
              + text
              + "\" is no rate; write an ISO 4217 code and a figure, such as EUR=1.08");
    }
    single.put(code, new BigDecimal(parts[1].strip()));
  }
}
