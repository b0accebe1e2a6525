package fineweight.settings;

import com.fasterxml.jackson.databind.JsonNode;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/**
 * A file with the day's prices:
 *
 * <pre>{"date": "2026-11-25", "currency": "USD", "prices": {"XAG": "30.00", "Cu": "9500/t"}}</pre>
 */
public final class SpotFile {
  private SpotFile() {}

  /**
   * @throws SettingException if the file cannot be read or used; the sentence names the file and
   *     the place in it
   */
  public static SpotPrices read(Path file) throws SettingException {
    JsonNode root =
        JsonFile.read(file, "prices", "{\"date\": ..., \"currency\": ..., \"prices\": {...}}");
    CurrencyUnit currency = currency(text(root, "currency", file), file.toString());
    LocalDate date = date(text(root, "date", file), file);
    JsonNode prices = root.get("prices");
    if (prices == null || !prices.isObject() || prices.isEmpty()) {
      throw new SettingException(
          file + ": \"prices\" is missing; expected {\"XAG\": \"30.00\", ...}");
    }
    List<SpotPrice> read = new ArrayList<>();
    for (Iterator<Map.Entry<String, JsonNode>> each = prices.properties().iterator();
        each.hasNext(); ) {
      Map.Entry<String, JsonNode> entry = each.next();
      try {
        read.add(SpotText.parse(entry.getKey() + "=" + amount(entry), currency));
      } catch (SettingException unusable) {
        throw new SettingException(file + ", prices: " + unusable.getMessage());
      }
    }
    try {
      return SpotPrices.of(currency, date, read);
    } catch (IllegalArgumentException twice) {
      throw new SettingException(file + ", prices: " + twice.getMessage());
    }
  }

  /**
   * The address that the prices were fetched from; empty if a person wrote them.
   *
   * @throws SettingException if the file cannot be read
   */
  public static String origin(Path file) throws SettingException {
    return JsonFile.read(file, "prices", "{\"date\": ...}").path("from").asText("");
  }

  private static String amount(Map.Entry<String, JsonNode> entry) throws SettingException {
    JsonNode value = entry.getValue();
    if (!value.isTextual() && !value.isNumber()) {
      throw new SettingException(
          "the price of " + entry.getKey() + " is no number; write it as \"30.25\"");
    }
    return value.asText();
  }

  private static String text(JsonNode root, String field, Path file) throws SettingException {
    JsonNode value = root.get(field);
    if (value == null || !value.isTextual()) {
      throw new SettingException(file + ": \"" + field + "\" is missing");
    }
    return value.asText();
  }

  private static LocalDate date(String text, Path file) throws SettingException {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException unusable) {
      throw new SettingException(file + ": \"" + text + "\" is no date; write it as 2026-11-25");
    }
  }

  /**
   * @param where for the sentence: the file or option that names it
   * @throws SettingException if it is no currency of ISO 4217
   */
  public static CurrencyUnit currency(String code, String where) throws SettingException {
    try {
      return CurrencyUnit.of(code);
    } catch (IllegalCurrencyException unknown) {
      throw new SettingException(
          where + ": \"" + code + "\" is no currency code of ISO 4217, such as USD or EUR");
    }
  }
}
