package fineweight.refresh.own;

import fineweight.column.RowText;
import fineweight.grade.Grade;
import fineweight.money.Amounts;
import fineweight.price.ExchangeRates;
import fineweight.price.ListedPrice;
import fineweight.price.PriceList;
import fineweight.refresh.inventory.RowMoney;
import fineweight.standard.CoinStandard;
import fineweight.standard.Years;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/** Reads a price list. Each line counts for every coin that its words may mean. */
final class OwnPrices {
  private final OwnTable table;
  private final CoinWords coins;
  private final ExchangeRates rates;
  private final CurrencyUnit currency;
  private final List<String> remarks;
  private final List<ListedPrice> lines = new ArrayList<>();
  private final Map<String, RowText> seen = new HashMap<>();
  private final Map<String, BigMoney> prices = new HashMap<>();

  /** A line that cannot be used, and what to do. */
  private static final class Unusable extends Exception {
    private static final long serialVersionUID = 1L;

    Unusable(String sentence) {
      super(sentence);
    }
  }

  OwnPrices(
      OwnTable table,
      CoinWords coins,
      ExchangeRates rates,
      CurrencyUnit currency,
      List<String> remarks) {
    this.table = table;
    this.coins = coins;
    this.rates = rates;
    this.currency = currency;
    this.remarks = remarks;
  }

  PriceList read() {
    for (RowText line : table.rows()) {
      String price =
          table.at(line, "price") + table.at(line, "raw price") + table.at(line, "certified price");
      if (!table.at(line, "type").isEmpty() && !price.isEmpty()) {
        try {
          add(line);
        } catch (Unusable unusable) {
          remarks.add(table.remark(line, unusable.getMessage()));
        }
      }
    }
    return PriceList.of(lines);
  }

  private void add(RowText line) throws Unusable {
    boolean certified = certified(table.at(line, "certified"));
    add(line, table.at(line, "price"), certified);
    add(line, table.at(line, "raw price"), false);
    add(line, table.at(line, "certified price"), true);
  }

  private void add(RowText line, String text, boolean certified) throws Unusable {
    if (text.isEmpty()) {
      return;
    }
    Optional<Years> years = years(table.at(line, "years"));
    Optional<Grade> grade = grade(table.at(line, "grade"));
    String mint = mint(table.at(line, "mint"));
    String written = table.at(line, "day");
    Optional<LocalDate> day = day(written);
    if (day.isEmpty() && !written.isEmpty()) {
      throw new Unusable("\"" + written + "\" is no date; write it as 2026-03-31");
    }
    Priced priced = price(line, text);
    List<CoinStandard> meant = meant(line, years);
    String day1 = day.map(LocalDate::toString).orElse("");
    for (CoinStandard standard : meant) {
      clash(line, standard.id() + years + mint + grade + certified + day1, priced.each());
      lines.add(
          new ListedPrice(
              new ListedPrice.Pieces(standard.id(), years, mint),
              grade,
              certified,
              priced.each(),
              day,
              priced.origin()));
    }
  }

  private List<CoinStandard> meant(RowText line, Optional<Years> years) throws Unusable {
    List<CoinStandard> meant = coins.meant(table.at(line, "type"), years);
    if (meant.isEmpty()) {
      throw new Unusable(
          "\""
              + table.at(line, "type")
              + "\""
              + years.map(known -> " of " + known).orElse("")
              + " is no coin that is known; write it as you do in the inventory, or what stands in"
              + " its column Standard");
    }
    return meant;
  }

  /** Two lines for the same pieces and day: the price list takes the lower one, and we say so. */
  private void clash(RowText line, String key, BigMoney each) {
    RowText before = seen.putIfAbsent(key, line);
    BigMoney other = prices.putIfAbsent(key, each);
    if (before != null && before.row() != line.row() && !each.isEqual(other)) {
      String sentence =
          table.place()
              + ", rows "
              + (before.row() + 1)
              + " and "
              + (line.row() + 1)
              + ": two prices for the same pieces, "
              + Amounts.words(other)
              + " and "
              + Amounts.words(each)
              + "; delete one or date both. The lower one counts.";
      if (!remarks.contains(sentence)) {
        remarks.add(sentence);
      }
    }
  }

  private record Priced(BigMoney each, String origin) {}

  private Priced price(RowText line, String text) throws Unusable {
    RowMoney.Amount amount = RowMoney.Amount.read(text);
    BigDecimal figure =
        amount
            .value()
            .filter(number -> number.signum() >= 0)
            .orElseThrow(
                () -> new Unusable("\"" + text + "\" is no price; write a number such as 45.00"));
    String column = table.at(line, "currency");
    String code = column.isEmpty() ? amount.currency() : column;
    String origin = table.at(line, "origin");
    if (code.isEmpty()) {
      return new Priced(BigMoney.of(currency, figure), origin);
    }
    CurrencyUnit unit =
        ExchangeRates.currency(code)
            .orElseThrow(
                () ->
                    new Unusable(
                        "\"" + code + "\" is no currency; write its ISO 4217 code, such as EUR"));
    BigMoney given = BigMoney.of(unit, figure);
    BigMoney each =
        rates
            .convert(given, currency)
            .orElseThrow(
                () ->
                    new Unusable(
                        "the price is in "
                            + unit
                            + " and there is no rate for it; put it into a sheet of rates or give --rate "
                            + unit
                            + "=..."));
    String converted =
        unit.equals(currency)
            ? origin
            : origin
                + (origin.isEmpty() ? "" : ", ")
                + Amounts.words(given)
                + " at the rate of "
                + rates.date();
    return new Priced(each, converted);
  }

  private static boolean certified(String text) throws Unusable {
    String plain = text.toLowerCase(Locale.ROOT);
    if (plain.matches("|no|n|raw|false|0|nein|nee|non")) {
      return false;
    }
    if (plain.matches("yes|y|x|certified|slabbed|true|1|ja|oui|✓")) {
      return true;
    }
    throw new Unusable("Certified is yes or no, not \"" + text + "\"");
  }

  private static Optional<Years> years(String text) throws Unusable {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          Years.parse(text.replaceAll("\\s*[–—-]\\s*", "-").replaceAll("\\s*,\\s*", ";")));
    } catch (IllegalArgumentException unusable) {
      throw new Unusable(
          "\"" + text + "\" is no year and no range of years; write 1921 or 1878-1904");
    }
  }

  private static Optional<Grade> grade(String text) throws Unusable {
    if (text.isEmpty() || text.equalsIgnoreCase("any")) {
      return Optional.empty();
    }
    Optional<Grade> grade = Grade.read(text);
    if (grade.isEmpty()) {
      throw new Unusable("\"" + text + "\" is no grade; write it as VF-30, MS65 or 45");
    }
    return grade;
  }

  private static String mint(String text) {
    boolean none = text.toLowerCase(Locale.ROOT).matches("-|none|no mark|no mint ?mark");
    return none ? "NONE" : text.equalsIgnoreCase("any") ? "" : text;
  }

  /** A day as ISO writes it; a bare year or month is its first day. */
  static Optional<LocalDate> day(String text) {
    try {
      String whole =
          text.matches("(19|20)\\d{2}")
              ? text + "-01-01"
              : text.matches("(19|20)\\d{2}-\\d{2}") ? text + "-01" : text;
      return whole.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(whole));
    } catch (DateTimeParseException notADay) {
      return Optional.empty();
    }
  }
}
