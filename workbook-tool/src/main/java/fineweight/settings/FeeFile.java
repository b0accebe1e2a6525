package fineweight.settings;

import com.fasterxml.jackson.databind.JsonNode;
import fineweight.money.Amounts;
import fineweight.sale.Commission;
import fineweight.sale.FeeSchedule;
import fineweight.sale.Handling;
import fineweight.sale.Payment;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * A file with what selling in one place costs; all figures are the collector's own. Only the
 * currency is needed, everything else is nothing where it is left out:
 *
 * <pre>{"name": "an invented fair", "currency": "USD",
 *  "commission": "12.5 up to 1000; 9", "commission rule": "each part", "commission cap": "250",
 *  "commission on postage": false, "fixed": "0.50", "payment percent": "2.5",
 *  "payment fixed": "0.30", "postage charged": "5", "postage paid": "6.40", "packing": "1.10"}
 * </pre>
 */
public final class FeeFile {
  private static final Set<String> FIELDS =
      Set.of(
          "name",
          "currency",
          "commission",
          "commission rule",
          "commission cap",
          "commission on postage",
          "fixed",
          "payment percent",
          "payment fixed",
          "postage charged",
          "postage paid",
          "packing");

  private final Path file;
  private final JsonNode root;
  private final CurrencyUnit currency;

  private FeeFile(Path file, JsonNode root, CurrencyUnit currency) {
    this.file = file;
    this.root = root;
    this.currency = currency;
  }

  /**
   * @param wanted the currency of the prices, which the file's must be
   * @throws SettingException if the file cannot be read or used; the sentence names the file and
   *     the field
   */
  public static FeeSchedule read(Path file, CurrencyUnit wanted) throws SettingException {
    JsonNode root = JsonFile.read(file, "fees", "{\"currency\": \"USD\", \"commission\": \"10\"}");
    for (Iterator<String> names = root.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      if (!FIELDS.contains(name)) {
        throw new SettingException(
            file
                + ": \""
                + name
                + "\" is no field of a file of fees; the fields are "
                + String.join(", ", FIELDS.stream().sorted().toList()));
      }
    }
    CurrencyUnit currency = SpotFile.currency(root.path("currency").asText(""), file.toString());
    if (!currency.equals(wanted)) {
      throw new SettingException(
          file
              + ": the fees are in "
              + currency
              + ", the prices in "
              + wanted
              + "; give both in one");
    }
    return new FeeFile(file, root, currency).schedule();
  }

  private FeeSchedule schedule() throws SettingException {
    try {
      return new FeeSchedule(
          root.path("name").asText(""),
          commission(),
          money("fixed"),
          new Payment(number("payment percent"), money("payment fixed")),
          new Handling(money("postage charged"), money("postage paid"), money("packing")));
    } catch (IllegalArgumentException impossible) {
      throw new SettingException(file + ": " + impossible.getMessage());
    }
  }

  private Commission commission() throws SettingException {
    String tiers = root.path("commission").asText("0");
    String rule = root.path("commission rule").asText("each part");
    if (!List.of("each part", "whole price").contains(rule)) {
      throw new SettingException(
          file + ": \"commission rule\" is \"each part\" or \"whole price\", not \"" + rule + "\"");
    }
    Optional<Money> cap =
        root.has("commission cap") ? Optional.of(money("commission cap")) : Optional.empty();
    return new Commission(
        Commission.parseTiers(tiers, currency),
        rule.equals("each part") ? Commission.Rule.EACH_PART : Commission.Rule.WHOLE_PRICE,
        cap,
        root.path("commission on postage").asBoolean(false));
  }

  private Money money(String field) throws SettingException {
    return Amounts.atCell(BigMoney.of(currency, number(field)));
  }

  private BigDecimal number(String field) throws SettingException {
    String text = root.path(field).asText("0").strip();
    try {
      return new BigDecimal(text);
    } catch (NumberFormatException notANumber) {
      throw new SettingException(
          file + ": \"" + field + "\" is no number: \"" + text + "\"; write it as 2.50");
    }
  }
}
