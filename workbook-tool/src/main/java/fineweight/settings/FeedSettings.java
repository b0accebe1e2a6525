package fineweight.settings;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import fineweight.metal.Metal;
import fineweight.quantity.MassUnit;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;

/**
 * Where prices are fetched from, as a person wrote it into a settings file; the schema is {@code
 * docs/settings.schema.json}. Immutable.
 *
 * @param file the settings file
 * @param address https, or http on this machine
 * @param currency of all figures
 * @param dateAt where the day of the prices stands, if anywhere
 * @param prices where each metal's price stands
 */
public record FeedSettings(
    Path file,
    URI address,
    CurrencyUnit currency,
    Optional<JsonPointer> dateAt,
    Map<Metal, Figure> prices,
    Limits limits) {
  private static final Set<String> FIELDS =
      Set.of(
          "address",
          "currency",
          "date at",
          "prices",
          "time-out seconds",
          "attempts",
          "largest bytes",
          "warn after days");

  /**
   * @param at a JSON Pointer (RFC 6901)
   * @param unit the mass that the price buys
   */
  public record Figure(JsonPointer at, MassUnit unit) {}

  /**
   * @param seconds for one attempt, from the call to the last byte
   * @param attempts from 1
   * @param bytes the largest answer that is read
   * @param days prices older than this are warned of
   */
  public record Limits(int seconds, int attempts, int bytes, int days) {}

  /**
   * @throws SettingException if the file cannot be read or used; the sentence names file and field
   */
  public static FeedSettings read(Path file) throws SettingException {
    JsonNode root =
        JsonFile.read(
            file, "settings", "{\"spot\": {\"address\": ..., \"currency\": ..., \"prices\": {}}}");
    JsonNode spot = root.path("spot");
    if (!spot.isObject()) {
      throw new SettingException(file + ": \"spot\" is missing; see docs/settings.md");
    }
    for (Iterator<String> names = spot.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      if (!FIELDS.contains(name)) {
        throw new SettingException(
            file
                + ", spot: \""
                + name
                + "\" is no field; the fields are "
                + String.join(", ", FIELDS.stream().sorted().toList()));
      }
    }
    return new FeedSettings(
        file,
        address(spot.path("address").asText(""), file.toString()),
        SpotFile.currency(spot.path("currency").asText(""), file + ", spot"),
        spot.has("date at")
            ? Optional.of(pointer(spot.path("date at").asText(), file))
            : Optional.empty(),
        prices(spot.path("prices"), file),
        new Limits(
            whole(spot, "time-out seconds", 10, 300, file),
            whole(spot, "attempts", 3, 10, file),
            whole(spot, "largest bytes", 1_000_000, 50_000_000, file),
            whole(spot, "warn after days", 3, 10_000, file)));
  }

  private static Map<Metal, Figure> prices(JsonNode node, Path file) throws SettingException {
    Map<Metal, Figure> prices = new EnumMap<>(Metal.class);
    for (Map.Entry<String, JsonNode> entry : node.properties()) {
      Metal metal =
          Metal.ofCode(entry.getKey())
              .orElseThrow(
                  () ->
                      new SettingException(
                          file
                              + ", prices: \""
                              + entry.getKey()
                              + "\" is no metal; use XAG or Cu"));
      Figure figure =
          new Figure(
              pointer(entry.getValue().path("at").asText(""), file),
              SpotText.unit(entry.getValue().path("unit").asText(""), metal));
      prices.put(metal, figure);
    }
    if (prices.isEmpty()) {
      throw new SettingException(
          file + ": \"prices\" names no metal; write {\"XAG\": {\"at\": \"/silver\"}}");
    }
    return prices;
  }

  private static JsonPointer pointer(String text, Path file) throws SettingException {
    try {
      if (!text.isEmpty()) {
        return JsonPointer.compile(text);
      }
    } catch (IllegalArgumentException noPointer) {
      // Said below.
    }
    throw new SettingException(
        file + ": \"" + text + "\" is no JSON Pointer (RFC 6901); it looks like /metals/silver");
  }

  private static int whole(JsonNode node, String field, int usual, int most, Path file)
      throws SettingException {
    if (!node.has(field)) {
      return usual;
    }
    JsonNode value = node.get(field);
    if (!value.canConvertToInt()
        || !value.isIntegralNumber()
        || value.intValue() < 1
        || value.intValue() > most) {
      throw new SettingException(
          file + ": \"" + field + "\" is a whole number from 1 to " + most + ", not " + value);
    }
    return value.intValue();
  }

  /**
   * An address that may be asked: https, or plain http on this machine, where nobody listens in.
   *
   * @param where for the sentence
   */
  public static URI address(String text, String where) throws SettingException {
    try {
      URI address = new URI(text);
      String scheme = String.valueOf(address.getScheme()).toLowerCase(Locale.ROOT);
      boolean open = scheme.equals("http") && isThisMachine(address);
      if (address.getHost() != null && (scheme.equals("https") || open)) {
        return address;
      }
    } catch (URISyntaxException noAddress) {
      // Said below.
    }
    throw new SettingException(
        where
            + ": \""
            + text
            + "\" is no address that is asked; it begins with https://, or with http://127.0.0.1 on"
            + " this machine");
  }

  private static boolean isThisMachine(URI address) {
    return Set.of("localhost", "127.0.0.1", "[::1]").contains(String.valueOf(address.getHost()));
  }
}
