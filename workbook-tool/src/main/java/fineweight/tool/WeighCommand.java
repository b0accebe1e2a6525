package fineweight.tool;

import fineweight.clue.word.NumberText;
import fineweight.lot.HeapByScale;
import fineweight.metal.Metal;
import fineweight.money.Amounts;
import fineweight.price.TimesFace;
import fineweight.quantity.Mass;
import fineweight.quantity.MassUnit;
import fineweight.settings.SettingException;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import fineweight.valuation.Wear;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "weigh",
    description = {
      "Weigh a heap: its ounces, its melt and its wear from the mass on the scale.",
      "Such as: fineweight weigh 1,240 g mixed 90 %% --face 49.60",
      "Tells its ounces and melt and, where you counted the face value, how much is lost by wear."
    })
final class WeighCommand implements Callable<Integer> {
  private static final Pattern HEAP =
      Pattern.compile(
          "([0-9][0-9.,']*)\\s*(kg|g|gr|ozt|oz|lb|dwt|grams?|kilos?|pounds?|troy ounces?)\\b(.*)");

  private final Surroundings surroundings;

  @Parameters(
      arity = "1..*",
      paramLabel = "WORDS",
      description = {
        "Mass with its unit (g, kg, ozt, lb), then what the heap is: 90 %% (dimes, quarters, halves),",
        "40 %% (halves of 1965 to 1970) or wartime nickels of the United States."
      })
  private List<String> words;

  @Mixin private PriceOptions prices;

  @Option(
      names = "--face",
      paramLabel = "DOLLARS",
      description = "The face value of the heap, if you counted it.")
  private BigDecimal face;

  WeighCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws SettingException {
    String text = String.join(" ", words).toLowerCase(Locale.ROOT);
    Matcher heap = HEAP.matcher(text);
    if (!heap.find()) {
      throw new SettingException(
          "\"" + text + "\" names no mass; write it as 1,240 g mixed 90 %, or 2 lb of 40 %");
    }
    if (face != null && face.signum() <= 0) {
      throw new SettingException("--face is more than zero, not " + face.toPlainString());
    }
    Mass mass = mass(heap.group(1), heap.group(2));
    HeapByScale found =
        HeapByScale.of(kind(text.replace(heap.group(1), "")), mass, Optional.ofNullable(face));
    print(found, prices.prices(surroundings.today(), surroundings.err()::println));
    return ExitCode.DONE.code();
  }

  private static Mass mass(String figure, String unit) throws SettingException {
    BigDecimal number =
        NumberText.read(figure)
            .filter(amount -> amount.signum() > 0)
            .orElseThrow(() -> new SettingException("\"" + figure + "\" is no mass above zero"));
    MassUnit wanted =
        switch (unit) {
          case "kg", "kilo", "kilos" -> MassUnit.KILOGRAM;
          case "gr" -> MassUnit.GRAIN;
          case "ozt", "troy ounce", "troy ounces" -> MassUnit.TROY_OUNCE;
          case "lb", "pound", "pounds" -> MassUnit.POUND;
          case "dwt" -> MassUnit.PENNYWEIGHT;
          case "oz" ->
              throw new SettingException(
                  "\"oz\" can be a troy or a kitchen ounce; write ozt for troy, or grams");
          default -> MassUnit.GRAM;
        };
    return Mass.of(number, wanted);
  }

  private static HeapByScale.Kind kind(String text) throws SettingException {
    if (text.matches("(?s).*\\b(war|wartime)\\b.*|.*\\b35 ?%.*|.*\\b350\\b.*")) {
      return HeapByScale.Kind.US_WARTIME_FIVE_CENTS;
    }
    if (text.matches("(?s).*\\b40 ?%.*|.*\\b400\\b.*")) {
      return HeapByScale.Kind.US_40;
    }
    if (text.matches("(?s).*\\b90 ?%.*|.*\\b900\\b.*")) {
      return HeapByScale.Kind.US_90;
    }
    throw new SettingException(
        "what the heap is was not understood; say 90 %, 40 % or wartime nickels. For other alloys put the mass"
            + " into your list and ask explain: fineweight explain 820 g of 925 silver");
  }

  private void print(HeapByScale heap, SpotPrices spot) {
    PrintWriter out = surroundings.out();
    out.println(Main.sentence(heap.sentence()));
    out.println(
        "  silver  "
            + heap.content()
                .troyOunces(Metal.SILVER)
                .setScale(4, RoundingMode.HALF_UP)
                .toPlainString()
            + " fine troy ounces");
    Optional<SpotPrice> silver = spot.of(Metal.SILVER);
    if (silver.isEmpty()) {
      out.println("  melt    add --spot XAG=30.00 (price of one troy ounce)");
      return;
    }
    out.println(
        "  melt    "
            + Amounts.words(spot.melt(heap.content()))
            + " at the spot price of "
            + spot.date());
    if (spot.currency().getCode().equals("USD") && heap.struck().isPresent()) {
      BigDecimal melt = spot.melt(heap.content()).getAmount();
      out.println(
          "  that is "
              + melt.divide(face, 2, RoundingMode.HALF_UP).toPlainString()
              + " times its face value"
              + unworn(silver.get(), heap));
    }
    out.println("  A buyer pays less than melt.");
  }

  private static String unworn(SpotPrice silver, HeapByScale heap) {
    boolean fine = heap.finding() == HeapByScale.Finding.AGREE;
    return fine && heap.sentence().contains(HeapByScale.Kind.US_90.words())
        ? ", unworn "
            + TimesFace.atMelt(silver, Wear.none())
                .times()
                .setScale(2, RoundingMode.HALF_UP)
                .toPlainString()
        : "";
  }
}
