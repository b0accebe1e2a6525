package fineweight.refresh.inventory;

import fineweight.clue.word.NumberText;
import fineweight.column.Appraisal;
import fineweight.column.FoundTable;
import fineweight.column.InputColumn;
import fineweight.column.RowText;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a row says of money. Immutable.
 *
 * @param lot the lot's name as written; empty if none
 * @param ofRow whether the heading says that the cost is the row's own and not that of a lot
 * @param cost the cost of the row; empty if none is written or it cannot be read
 * @param currency ISO 4217 code or empty if none is written
 * @param unreadable the cost's text if it is no amount; otherwise empty
 * @param ownPrice the collector's own price for one piece; empty if none is written or it cannot be
 *     read
 * @param payoutClass the collector's word for the row's class of payout; empty if none
 */
public record RowMoney(
    String lot,
    boolean ofRow,
    Optional<BigDecimal> cost,
    String currency,
    String unreadable,
    Optional<Own> ownPrice,
    String payoutClass) {
  public static final RowMoney NONE =
      new RowMoney("", false, Optional.empty(), "", "", Optional.empty(), "");

  /**
   * The collector's own price for one piece.
   *
   * @param currency ISO 4217 code or empty if none is written beside the figure
   */
  public record Own(BigDecimal each, String currency) {}

  private static final Pattern CODE =
      Pattern.compile("([a-z]{3})\\s*([-0-9.,]+)|([-0-9.,]+)\\s*([a-z]{3})");

  private static final Map<String, String> SIGNS =
      Map.of(
          "$", "USD", "€", "EUR", "£", "GBP", "¥", "JPY", "eur", "EUR", "usd", "USD", "gbp", "GBP",
          "chf", "CHF");

  public static RowMoney of(RowText row, FoundTable table, Appraisal appraisal) {
    String lot = table.first(InputColumn.LOT).map(row::at).orElse("").strip();
    String currency =
        table.first(InputColumn.CURRENCY).map(row::at).orElse("").strip().toUpperCase(Locale.ROOT);
    Optional<Own> own = written(row, table, InputColumn.OWN_PRICE).flatMap(RowMoney::own);
    String payoutClass = written(row, table, InputColumn.PAYOUT_CLASS).orElse("");
    Optional<String> each = written(row, table, InputColumn.COST_EACH);
    Optional<String> all = written(row, table, InputColumn.COST_ALL);
    Optional<String> whole = all.or(() -> written(row, table, InputColumn.COST));
    BigDecimal times =
        whole.isPresent() ? BigDecimal.ONE : BigDecimal.valueOf(appraisal.pieces().orElse(1L));
    Optional<String> cost = whole.or(() -> each);
    if (cost.isEmpty()) {
      return new RowMoney(lot, false, Optional.empty(), currency, "", own, payoutClass);
    }
    Amount amount = Amount.read(cost.get());
    Optional<BigDecimal> value = amount.value().filter(figure -> figure.signum() >= 0);
    String code = currency.isEmpty() ? amount.currency() : currency;
    String unreadable = value.isEmpty() ? cost.get() : "";
    boolean ofRow = all.isPresent() || whole.isEmpty();
    return new RowMoney(lot, ofRow, value.map(times::multiply), code, unreadable, own, payoutClass);
  }

  private static Optional<Own> own(String text) {
    Amount amount = Amount.read(text);
    return amount
        .value()
        .filter(price -> price.signum() > 0)
        .map(price -> new Own(price, amount.currency()));
  }

  private static Optional<String> written(RowText row, FoundTable table, InputColumn column) {
    return table.first(column).map(row::at).map(String::strip).filter(text -> !text.isEmpty());
  }

  /** A figure of money as people write it; empty if it is none. */
  public static Optional<BigDecimal> amount(String text) {
    return Amount.read(text).value();
  }

  /** An amount as people write it, with or without a sign of its currency. */
  public record Amount(Optional<BigDecimal> value, String currency) {
    public static Amount read(String text) {
      String currency = "";
      String bare = text.toLowerCase(Locale.ROOT);
      for (Map.Entry<String, String> entry : SIGNS.entrySet()) {
        if (bare.contains(entry.getKey())) {
          currency = entry.getValue();
          bare = bare.replace(entry.getKey(), "");
        }
      }
      Matcher code = CODE.matcher(bare.strip());
      if (currency.isEmpty() && code.matches()) {
        String letters = code.group(1) != null ? code.group(1) : code.group(4);
        String figure = code.group(1) != null ? code.group(2) : code.group(3);
        return new Amount(NumberText.read(figure), letters.toUpperCase(Locale.ROOT));
      }
      return new Amount(NumberText.read(bare.strip()), currency);
    }
  }
}
