package fineweight.refresh.own;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** The lists that a collector may keep beside his inventory, and the headings they are known by. */
enum ListKind {
  PRICES(
      "price list",
      "price|preis|prijs|prix|prezz|precio",
      Map.of(
          "type", "type|coin|coins|what|piece|description|item|standard",
          "years", "years?|coin years?|jahre?|jaar",
          "mint", "mint|mint ?mark|mm",
          "grade", "grade|condition",
          "certified", "certified|certified\\?|certified or raw|slabbed|holder",
          "price", "price|price each|my price|value|worth|each",
          "raw price", "raw price|price raw|raw",
          "certified price", "certified price|price certified",
          "currency", "currency",
          "day", "as of|date|day|price date|date of price|noted|noted on"),
      Map.of("origin", "origin|source|from|where from|price from|taken from"),
      "as of|price date|date of price|raw price|price raw|certified price|price certified"),
  PAYOUTS(
      "list of payouts",
      "",
      Map.of(
          "metal", "metal",
          "class", "class|payout class|class of payout|kind",
          "payout", "payout|pays|buyer pays|pay"),
      Map.of(),
      "payout|pays|buyer pays"),
  RATES(
      "list of exchange rates",
      "",
      Map.of(
          "currency", "currency|code|iso code|currency code",
          "rate", "rate|exchange rate|one is|(?:in )?([a-z]{3}) for one|([a-z]{3}) per one",
          "for one", "(?:for|per) one ([a-z]{3})|(?:for|per) (?:1 )?([a-z]{3})",
          "day", "as of|date|day|rate date"),
      Map.of(),
      "rate|exchange rate|one is|(?:in )?[a-z]{3} (?:for|per) one|(?:for|per) (?:one |1 )?[a-z]{3}"),
  PLACES(
      "list of a set",
      "\\bset\\b|type ?list|holes",
      Map.of(
          "place", "place|place in the set|name|hole",
          "country", "country",
          "denomination", "denomination|denom",
          "years", "years?|dates?",
          "mints", "mints?|mint ?marks?",
          "coin", "coin|coins|what fills it",
          "standards", "standards?|standard ids?",
          "key", "key"),
      Map.of(),
      "standards|what fills it");

  /** Headings of an inventory that no list of these has. */
  static final Set<String> INVENTORY_ONLY =
      Set.of("count", "lot", "cost each", "cost all", "status", "sold for", "date bought");

  private final String words;
  private final Pattern sheetName;
  private final Map<String, Pattern> columns = new LinkedHashMap<>();
  private final Pattern telling;

  ListKind(
      String words,
      String sheetName,
      Map<String, String> columns,
      Map<String, String> more,
      String telling) {
    this.words = words;
    this.sheetName = Pattern.compile(sheetName.isEmpty() ? "(?!)" : sheetName);
    columns.forEach((column, headings) -> this.columns.put(column, Pattern.compile(headings)));
    more.forEach((column, headings) -> this.columns.put(column, Pattern.compile(headings)));
    this.telling = Pattern.compile(telling);
  }

  /** For a person. */
  String words() {
    return words;
  }

  /** The headings of each column, in lower case. */
  Map<String, Pattern> columns() {
    return columns;
  }

  /** Whether a sheet's name in lower case says that it is such a list. */
  boolean isNamedIn(String sheet) {
    return sheetName.matcher(sheet).find();
  }

  /** Whether a heading in lower case stands over no other list and no inventory. */
  boolean isTold(String heading) {
    return telling.matcher(heading).matches();
  }

  /** Whether these columns are enough to read the list. */
  boolean isComplete(Set<String> found) {
    return switch (this) {
      case PRICES ->
          found.contains("type")
              && (found.contains("price")
                  || found.contains("raw price")
                  || found.contains("certified price"));
      case PAYOUTS -> found.contains("metal") && found.contains("payout");
      case RATES ->
          found.contains("currency") && (found.contains("rate") || found.contains("for one"));
      case PLACES -> found.contains("place") || found.contains("coin");
    };
  }

  /** The headings that are needed, for a message. */
  String needed() {
    return switch (this) {
      case PRICES -> "Type, Year, Mint, Grade, Certified, Price, As of and Origin";
      case PAYOUTS -> "Metal, Class and Payout";
      case RATES -> "Currency and Rate";
      case PLACES -> "Place, Coin, Country, Denomination, Years and Mints";
    };
  }
}
