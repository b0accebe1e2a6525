package fineweight.settings;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import fineweight.metal.Metal;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import java.io.IOException;
import java.nio.file.Files;
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
  private static final long LARGEST = 1_000_000;

  private SpotFile() {}

  /**
   * @throws SettingException if the file cannot be read or used; the sentence names the file and
   *     the place in it
   */
  public static SpotPrices read(Path file) throws SettingException {
    JsonNode root = parse(file);
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

  private static String amount(Map.Entry<String, JsonNode> entry) throws SettingException {
    JsonNode value = entry.getValue();
    if (!value.isTextual() && !value.isNumber()) {
      throw new SettingException(
          "the price of " + entry.getKey() + " is no number; write it as \"30.25\"");
    }
    return value.asText();
  }

  private static JsonNode parse(Path file) throws SettingException {
    JsonMapper mapper =
        JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();
    try {
      if (Files.size(file) > LARGEST) {
        throw new SettingException(file + " is too large for a file of prices");
      }
      JsonNode root = mapper.readTree(Files.readAllBytes(file));
      if (root == null || !root.isObject()) {
        throw new SettingException(
            file
                + " holds no JSON object; expected {\"date\": ..., \"currency\": ..., \"prices\": {...}}");
      }
      return root;
    } catch (JsonProcessingException broken) {
      var place = broken.getLocation();
      String where =
          place == null ? "" : ", line " + place.getLineNr() + ", column " + place.getColumnNr();
      throw new SettingException(file + where + ": this is no JSON that can be read");
    } catch (IOException failed) {
      throw new SettingException(
          "the file of prices " + file + " cannot be read; check its name and place");
    }
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

  /** The metals that have a price, for messages. */
  public static String metals(SpotPrices prices) {
    List<String> words = new ArrayList<>();
    for (Metal metal : prices.prices().keySet()) {
      words.add(metal.word());
    }
    return String.join(", ", words);
  }
}
