package fineweight.sheet.measure;

import fineweight.metal.Composition;
import fineweight.quantity.Mass;
import fineweight.quantity.MassUnit;
import fineweight.sheet.coin.Coin;
import fineweight.sheet.coin.Coins;
import fineweight.sheet.function.Given;
import fineweight.sheet.function.Outcome;
import fineweight.sheet.function.Parameter;
import fineweight.sheet.function.SheetFunction;
import fineweight.sheet.function.SheetFunction.Texts;
import fineweight.sheet.function.UnusableArgument;
import fineweight.standard.CoinStandard;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Functions about mass and density. */
public final class MeasureFunctions {
  private static final String UNITS = "g, kg, t, gr (grain), dwt, ozt, oz av or lb";

  /** Words that people write beside the signs of {@link MassUnit}. */
  private static final Map<String, MassUnit> WORDS =
      Map.of(
          "gram", MassUnit.GRAM,
          "grams", MassUnit.GRAM,
          "grain", MassUnit.GRAIN,
          "grains", MassUnit.GRAIN,
          "pennyweight", MassUnit.PENNYWEIGHT,
          "troy ounce", MassUnit.TROY_OUNCE);

  private MeasureFunctions() {}

  /** The functions in the order of the reference. */
  public static List<SheetFunction> all() {
    return List.of(massCheck(), density(), conversion());
  }

  private static SheetFunction massCheck() {

    List<Parameter> check =
        new ArrayList<>(
            List.of(
                Coins.COIN,
                Parameter.needed("mass", "g", "What one piece weighs on your scale"),
                Parameter.optional(
                    "tolerance",
                    "g",
                    "How far the mint might miss the standard, plus and minus; known for coins of"
                        + " the United States from 1837 on")));
    check.addAll(Coins.PARTS);
    return new SheetFunction(
        "massCheck",
        check,
        new Texts(
            "What a scale says about a coin.",
            "FINEWEIGHT.MASSCHECK(\"1964 half dollar\"; 12.31)",
            "as struck; light by so many per cent, as wear explains or more; or too heavy; with"
                + " the figures",
            "\"not known: \" and why"),
        MeasureFunctions::massCheck);
  }

  private static SheetFunction density() {
    return new SheetFunction(
        "density",
        List.of(Parameter.needed("alloy", "", "The alloy in parts per thousand: Ag 900; Cu 100")),
        new Texts(
            "The density of an alloy if its metals keep their volumes, for the water test.",
            "FINEWEIGHT.DENSITY(\"Ag 900; Cu 100\")",
            "grams for one cubic centimetre, not rounded",
            "#N/A where the parts do not add up to 1000 or their split is not known; a text"
                + " where the alloy cannot be read"),
        MeasureFunctions::density);
  }

  private static SheetFunction conversion() {
    return new SheetFunction(
        "conversion",
        List.of(
            Parameter.needed("amount", "", "The amount in the first unit, zero or more"),
            Parameter.needed("from", "", "Its unit: " + UNITS),
            Parameter.needed("to", "", "The unit wanted")),
        new Texts(
            "A mass in another unit.",
            "FINEWEIGHT.CONVERSION(412.5; \"gr\"; \"g\")",
            "the amount in the unit wanted, not rounded",
            "a text where a unit is not known or the amount is negative"),
        MeasureFunctions::conversion);
  }

  private static Outcome massCheck(Given given) {
    Optional<Coin> coin = Coins.standard().of(given);
    if (coin.isEmpty() || given.at("mass").saysNothing()) {
      return Outcome.BLANK;
    }
    Mass measured = Mass.ofGrams(given.positive("mass"));
    Optional<Mass> tolerance =
        Optional.of(given.notNegative("tolerance", BigDecimal.ZERO))
            .filter(grams -> grams.signum() > 0)
            .map(Mass::ofGrams);
    List<CoinStandard> weighed =
        coin.get().standards().stream()
            .filter(standard -> standard.specification().grossMass().isPresent())
            .toList();
    String remark = coin.get().remark();
    return Outcome.text(
        weighed.isEmpty()
            ? "not known: " + (remark.isEmpty() ? "no mass in the catalogue" : remark)
            : MassCheck.words(weighed, measured, tolerance));
  }

  private static Outcome density(Given given) {
    String words = given.words("alloy");
    if (words.isEmpty()) {
      return Outcome.BLANK;
    }
    return AlloyDensity.of(Composition.parse(words))
        .map(Outcome::number)
        .orElse(Outcome.NOT_AVAILABLE);
  }

  private static Outcome conversion(Given given) {
    if (given.number("amount").isEmpty()) {
      return Outcome.BLANK;
    }
    Mass mass = Mass.of(given.notNegative("amount", BigDecimal.ZERO), unit(given, "from"));
    return Outcome.number(mass.in(unit(given, "to")));
  }

  private static MassUnit unit(Given given, String name) {
    String words = given.words(name).toLowerCase(Locale.ROOT);
    for (MassUnit unit : MassUnit.values()) {
      if (unit.symbol().equals(words)) {
        return unit;
      }
    }
    return Optional.ofNullable(WORDS.get(words))
        .orElseThrow(
            () ->
                new UnusableArgument(
                    name, "expected " + UNITS + ", found \"" + Given.shortened(words) + "\""));
  }
}
