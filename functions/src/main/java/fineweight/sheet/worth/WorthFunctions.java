package fineweight.sheet.worth;

import fineweight.sheet.coin.Coin;
import fineweight.sheet.coin.Coins;
import fineweight.sheet.coin.FineFunctions;
import fineweight.sheet.function.Given;
import fineweight.sheet.function.Outcome;
import fineweight.sheet.function.Parameter;
import fineweight.sheet.function.SheetFunction;
import fineweight.sheet.function.SheetFunction.Texts;
import fineweight.spot.SpotPrices;
import fineweight.valuation.WorthRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Functions that say what one coin, or several alike, are worth. */
public final class WorthFunctions {
  private static final Parameter FACE =
      Parameter.optional(
          "face",
          "money",
          "The face value of one piece, where it is still money; none if left out");

  private static final Parameter OWN_PRICE =
      Parameter.optional(
          "own price", "money", "Your own price of one piece, which goes before metal and face");

  private static final String MISSES =
      "#N/A where the coin or the count is not known; the lowest where several coins are possible;"
          + " a text where a price is missing";

  private WorthFunctions() {}

  /** The functions in the order of the reference. */
  public static List<SheetFunction> all() {
    return List.of(melt(), worth(), worthBasis());
  }

  private static SheetFunction melt() {
    return new SheetFunction(
        "melt",
        parameters(List.of()),
        new Texts(
            "The metal of a coin, or of several alike, at a spot price.",
            "FINEWEIGHT.MELT(\"1964 half dollar\"; 30; 20; 2%; 95%)",
            "money, rounded half up to two places; 0 without a priced metal",
            MISSES),
        given -> one(given, WorthFunctions::worth));
  }

  private static SheetFunction worth() {
    return new SheetFunction(
        "worth",
        parameters(List.of(FACE, OWN_PRICE)),
        new Texts(
            "What a coin, or several alike, are worth: your own price, else the higher of metal"
                + " and face value.",
            "FINEWEIGHT.WORTH(\"1964 half dollar\"; 30; 20; 2%; 95%; 0.50)",
            "money, rounded half up to two places",
            MISSES),
        given -> one(given, WorthFunctions::worth));
  }

  private static SheetFunction worthBasis() {
    return new SheetFunction(
        "worthBasis",
        parameters(List.of(FACE, OWN_PRICE)),
        new Texts(
            "What the worth of a coin rests on.",
            "FINEWEIGHT.WORTHBASIS(\"1964 half dollar\"; 30; 20; 2%; 95%; 0.50)",
            "your figure, metal, face value, or nothing; with \", the lowest of several\" where"
                + " the coin is open",
            MISSES),
        given -> one(given, WorthFunctions::basis));
  }

  private static List<Parameter> parameters(List<Parameter> extra) {
    List<Parameter> parameters =
        new ArrayList<>(
            List.of(Coins.COIN, SpotArgument.SPOT, FineFunctions.PIECES, Terms.WEAR, Terms.PAYOUT));
    parameters.addAll(extra);
    parameters.addAll(Coins.PARTS);
    return parameters;
  }

  private static Outcome one(Given given, Function<WorthRange, Outcome> answer) {
    Terms terms = Terms.of(given);
    Optional<Coin> coin = Coins.standard().of(given);
    if (coin.isEmpty()) {
      return Outcome.BLANK;
    }
    SpotPrices spots = SpotArgument.of(given, List.of(coin.get()));
    return terms.value(coin.get(), spots).map(answer).orElse(Outcome.NOT_AVAILABLE);
  }

  private static Outcome worth(WorthRange range) {
    return Outcome.number(range.low().worth().atCell().getAmount());
  }

  private static Outcome basis(WorthRange range) {
    return Outcome.text(
        range.low().worth().basis().words() + (range.open() ? ", the lowest of several" : ""));
  }
}
