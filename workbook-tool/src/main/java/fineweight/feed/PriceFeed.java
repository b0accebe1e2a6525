package fineweight.feed;

import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fineweight.settings.FeedSettings;
import fineweight.settings.SettingException;
import fineweight.settings.SpotFile;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.function.Consumer;

/**
 * Today's prices from the address in the settings. The last good ones are kept beside the settings
 * file, in the form of a file of prices, and taken where the address fails.
 */
public final class PriceFeed {
  private final FeedSettings settings;
  private final Consumer<String> warnings;

  /**
   * @param warnings takes sentences that the user should see
   */
  public PriceFeed(FeedSettings settings, Consumer<String> warnings) {
    this.settings = settings;
    this.warnings = warnings;
  }

  /**
   * @throws SettingException if the address gives no prices and none are kept
   */
  public SpotPrices prices(LocalDate today) throws SettingException {
    SpotPrices prices;
    try {
      byte[] json = new Download(settings.limits()).get(settings.address());
      prices = FeedAnswer.prices(settings, json, today);
      keep(prices);
    } catch (FeedTrouble trouble) {
      prices = kept(trouble.getMessage(), today);
    }
    long age = ChronoUnit.DAYS.between(prices.date(), today);
    if (age > settings.limits().days()) {
      warnings.accept(
          "The prices are of "
              + prices.date()
              + ", "
              + age
              + " days old; you asked to be warned after "
              + settings.limits().days()
              + ".");
    }
    return prices;
  }

  /** Where the last good prices are kept. */
  static Path place(Path settings) {
    String name = settings.getFileName().toString().replaceAll("\\.json$", "");
    return settings.resolveSibling(name + ".last-prices.json");
  }

  private SpotPrices kept(String why, LocalDate today) throws SettingException {
    Path place = place(settings.file());
    String trouble = "the address " + settings.address() + " " + why;
    if (!Files.exists(place) || !SpotFile.origin(place).equals(settings.address().toString())) {
      throw new SettingException(
          trouble + ", and no earlier price of it is kept; give the prices with --spot");
    }
    SpotPrices kept = SpotFile.read(place);
    long age = ChronoUnit.DAYS.between(kept.date(), today);
    warnings.accept(
        "T"
            + trouble.substring(1)
            + "; the last good prices, of "
            + kept.date()
            + " ("
            + age
            + (age == 1 ? " day" : " days")
            + " old), are used.");
    return kept;
  }

  private void keep(SpotPrices prices) {
    JsonMapper mapper = JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();
    ObjectNode root = mapper.createObjectNode();
    root.put("from", settings.address().toString());
    root.put("date", prices.date().toString());
    root.put("currency", prices.currency().getCode());
    ObjectNode each = root.putObject("prices");
    for (SpotPrice price : prices.prices().values()) {
      each.put(
          price.metal().ounceCode().orElse(price.metal().symbol()),
          price.amount().toPlainString() + "/" + price.unit().symbol());
    }
    Path place = place(settings.file());
    Path whole = place.resolveSibling("." + place.getFileName() + ".new");
    try {
      Files.write(whole, mapper.writeValueAsBytes(root));
      Files.move(whole, place, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException failed) {
      warnings.accept("The prices could not be kept in " + place + " for a day without network.");
    }
  }
}
