package fineweight.feed;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import fineweight.metal.Metal;
import fineweight.settings.FeedSettings;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Takes the figures out of an answer that anybody may have made. */
final class FeedAnswer {
  private static final int DEEPEST = 50;
  private static final int LONGEST_NUMBER = 40;
  private static final Pattern PLAIN = Pattern.compile("[0-9]{1,12}(\\.[0-9]{1,12})?");
  private static final int DATE_LENGTH = "2026-11-25".length();

  private final FeedSettings settings;
  private final JsonNode root;

  private FeedAnswer(FeedSettings settings, JsonNode root) {
    this.settings = settings;
    this.root = root;
  }

  /**
   * @param today the day of the prices if the answer names none
   */
  static SpotPrices prices(FeedSettings settings, byte[] json, LocalDate today) throws FeedTrouble {
    return new FeedAnswer(settings, tree(json)).prices(today);
  }

  private static JsonNode tree(byte[] json) throws FeedTrouble {
    JsonFactory careful =
        JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .streamReadConstraints(
                StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxNumberLength(LONGEST_NUMBER)
                    .build())
            .build();
    JsonMapper mapper =
        JsonMapper.builder(careful)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();
    try {
      return mapper.readTree(json);
    } catch (JsonProcessingException broken) {
      throw new FeedTrouble("answered with JSON that cannot be read", false);
    } catch (IOException never) {
      throw new IllegalStateException("bytes in memory can be read", never);
    }
  }

  private SpotPrices prices(LocalDate today) throws FeedTrouble {
    List<SpotPrice> prices = new ArrayList<>();
    for (Map.Entry<Metal, FeedSettings.Figure> entry : settings.prices().entrySet()) {
      FeedSettings.Figure figure = entry.getValue();
      prices.add(new SpotPrice(entry.getKey(), number(figure), settings.currency(), figure.unit()));
    }
    return SpotPrices.of(settings.currency(), date(today), prices);
  }

  /** Plain decimal figures above zero, as a number or as a text. */
  private BigDecimal number(FeedSettings.Figure figure) throws FeedTrouble {
    JsonNode node = root.at(figure.at());
    String text = node.isNumber() ? plain(node) : node.isTextual() ? node.textValue() : "";
    if (!PLAIN.matcher(text).matches() || new BigDecimal(text).signum() == 0) {
      String found = node.isMissingNode() ? "nothing" : shortened(node.toString());
      throw new FeedTrouble(
          "answered with " + found + " at " + figure.at() + " and not with a price above zero",
          false);
    }
    return new BigDecimal(text);
  }

  /** Without an exponent; a figure with a huge one is not written out. */
  private static String plain(JsonNode node) {
    BigDecimal number = node.decimalValue();
    return Math.abs((long) number.scale()) <= LONGEST_NUMBER ? number.toPlainString() : "";
  }

  private LocalDate date(LocalDate today) throws FeedTrouble {
    if (settings.dateAt().isEmpty()) {
      return today;
    }
    JsonNode node = root.at(settings.dateAt().get());
    String text = node.asText("");
    try {
      LocalDate date = LocalDate.parse(text.substring(0, Math.min(DATE_LENGTH, text.length())));
      if (!date.isAfter(today.plusDays(1))) {
        return date;
      }
    } catch (DateTimeParseException unusable) {
      // Said below.
    }
    throw new FeedTrouble(
        "answered with "
            + shortened(node.toString())
            + " at "
            + settings.dateAt().get()
            + " and not with a date such as 2026-11-25 that is not to come",
        false);
  }

  private static String shortened(String text) {
    return text.length() <= 40 ? text : text.substring(0, 40) + "...";
  }
}
