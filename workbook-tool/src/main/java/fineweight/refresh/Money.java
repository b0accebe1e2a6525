package fineweight.refresh;

import fineweight.clue.word.NumberText;
import fineweight.column.Appraisal;
import fineweight.column.FoundTable;
import fineweight.column.InputColumn;
import fineweight.column.RowText;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What a row says of money. Immutable.
 *
 * @param lot the lot's name as written; empty if none
 * @param cost the cost of the row; empty if none is written or it cannot be read
 * @param currency ISO 4217 code or empty if none is written
 * @param unreadable the cost's text if it is no amount; otherwise empty
 */
record Money(String lot, Optional<BigDecimal> cost, String currency, String unreadable) {
  static final Money NONE = new Money("", Optional.empty(), "", "");

  private static final Map<String, String> SIGNS =
      Map.of(
          "$", "USD", "€", "EUR", "£", "GBP", "¥", "JPY", "eur", "EUR", "usd", "USD", "gbp", "GBP",
          "chf", "CHF");

  static Money of(RowText row, FoundTable table, Appraisal appraisal) {
    String lot = table.first(InputColumn.LOT).map(row::at).orElse("").strip();
    String currency =
        table.first(InputColumn.CURRENCY).map(row::at).orElse("").strip().toUpperCase(Locale.ROOT);
    Optional<String> each = written(row, table, InputColumn.COST_EACH);
    Optional<String> whole =
        written(row, table, InputColumn.COST_ALL).or(() -> written(row, table, InputColumn.COST));
    if (whole.isPresent()) {
      return read(lot, whole.get(), currency, BigDecimal.ONE);
    }
    if (each.isPresent()) {
      return read(lot, each.get(), currency, BigDecimal.valueOf(appraisal.pieces().orElse(1L)));
    }
    return new Money(lot, Optional.empty(), currency, "");
  }

  private static Optional<String> written(RowText row, FoundTable table, InputColumn column) {
    return table.first(column).map(row::at).map(String::strip).filter(text -> !text.isEmpty());
  }

  private static Money read(String lot, String text, String currency, BigDecimal times) {
    String sign = "";
    String bare = text.toLowerCase(Locale.ROOT);
    for (Map.Entry<String, String> entry : SIGNS.entrySet()) {
      if (bare.contains(entry.getKey())) {
        sign = entry.getValue();
        bare = bare.replace(entry.getKey(), "");
      }
    }
    Optional<BigDecimal> amount = NumberText.read(bare.strip());
    String code = currency.isEmpty() ? sign : currency;
    return amount.isPresent()
        ? new Money(lot, Optional.of(amount.get().multiply(times)), code, "")
        : new Money(lot, Optional.empty(), code, text);
  }
}
