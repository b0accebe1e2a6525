package fineweight.sheet.coin;

import fineweight.column.RowState;
import fineweight.metal.Metal;
import fineweight.sheet.function.Argument;
import fineweight.sheet.function.Given;
import fineweight.sheet.function.Outcome;
import fineweight.sheet.function.Parameter;
import fineweight.sheet.function.SheetFunction;
import fineweight.sheet.function.SheetFunction.Texts;
import fineweight.sheet.function.UnusableArgument;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/** Functions that say how much metal there is. */
public final class FineFunctions {
  public static final Parameter PIECES =
      Parameter.optional(
          "pieces",
          "",
          "How many, also as roll or $5 face; one, or what the coin's words say, if left out; 0 or a"
              + " blank cell gives #N/A");

  public static final Parameter COINS =
      Parameter.needed(
          "coins", "", "An area with one coin in each row, its words in one or several cells");

  public static final Parameter PIECES_OF_ROWS =
      Parameter.optional("pieces", "", "A column with the pieces of each row; blank for one piece");

  private static final String MISSES =
      "#N/A where the coin or the count is not known; the lowest where several coins are possible;"
          + " 0 without such a metal";

  private FineFunctions() {}

  /** The functions in the order of the reference. */
  public static List<SheetFunction> all() {
    return List.of(fineMass(), fineOunces(), fineOuncesList(), pieces());
  }

  private static SheetFunction fineMass() {
    return new SheetFunction(
        "fineMass",
        parameters(Coins.COIN),
        new Texts(
            "The mass of one metal in a coin, or in several alike.",
            "FINEWEIGHT.FINEMASS(\"1964 half dollar\"; \"silver\"; 20)",
            "grams, not rounded",
            MISSES),
        given -> one(given, Coin::leastGrams));
  }

  private static SheetFunction fineOunces() {
    return new SheetFunction(
        "fineOunces",
        parameters(Coins.COIN),
        new Texts(
            "The fine troy ounces of one metal in a coin, or in several alike.",
            "FINEWEIGHT.FINEOUNCES(\"1964 half dollar\"; \"silver\"; 20)",
            "troy ounces, not rounded",
            MISSES),
        given -> one(given, Coin::leastOunces));
  }

  private static SheetFunction fineOuncesList() {
    return new SheetFunction(
        "fineOuncesList",
        List.of(COINS, MetalArgument.METAL, PIECES_OF_ROWS),
        new Texts(
            "The fine troy ounces of one metal in every row of a list, by one matrix formula.",
            "FINEWEIGHT.FINEOUNCESLIST(A2:A500; \"silver\"; B2:B500)",
            "a column of troy ounces, one for each row, blank for a blank row",
            MISSES),
        FineFunctions::list);
  }

  private static SheetFunction pieces() {
    return new SheetFunction(
        "pieces",
        pieceParameters(),
        new Texts(
            "The number of pieces that a quantity in words stands for.",
            "FINEWEIGHT.PIECES(\"$5 face\"; \"1964 quarter\")",
            "a whole number",
            "the reason in words where the number is not known"),
        FineFunctions::pieces);
  }

  private static List<Parameter> parameters(Parameter first) {
    List<Parameter> parameters = new ArrayList<>(List.of(first, MetalArgument.METAL, PIECES));
    parameters.addAll(Coins.PARTS);
    return parameters;
  }

  private static List<Parameter> pieceParameters() {
    List<Parameter> parameters = new ArrayList<>();
    parameters.add(
        Parameter.needed("pieces", "", "The quantity: a number, roll, 2 rolls, $5 face"));
    parameters.add(Coins.COIN);
    parameters.addAll(Coins.PARTS);
    return parameters;
  }

  private static Outcome one(Given given, BiFunction<Coin, Metal, Optional<BigDecimal>> figure) {
    Metal metal = MetalArgument.of(given);
    return Coins.standard().of(given).map(coin -> ofAll(coin, metal, figure)).orElse(Outcome.BLANK);
  }

  private static Outcome ofAll(
      Coin coin, Metal metal, BiFunction<Coin, Metal, Optional<BigDecimal>> figure) {
    if (coin.state() == RowState.NOTHING && coin.possible().isEmpty()) {
      return Outcome.number(BigDecimal.ZERO);
    }
    Optional<BigDecimal> each = figure.apply(coin, metal);
    return coin.state() == RowState.NOT_KNOWN || each.isEmpty() || coin.pieces().isEmpty()
        ? Outcome.NOT_AVAILABLE
        : Outcome.number(each.get().multiply(BigDecimal.valueOf(coin.pieces().get())));
  }

  private static Outcome list(Given given) {
    Metal metal = MetalArgument.of(given);
    List<List<Argument>> rows = given.rows("coins");
    if (rows.isEmpty()) {
      return Outcome.BLANK;
    }
    List<Argument> counts = counts(given, rows.size());
    List<Outcome> column = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Optional<Argument> count = counts.isEmpty() ? Optional.empty() : Optional.of(counts.get(i));
      column.add(
          Coins.standard()
              .of(rows.get(i), count)
              .map(coin -> ofAll(coin, metal, Coin::leastOunces))
              .orElse(Outcome.BLANK));
    }
    return Outcome.column(column);
  }

  /**
   * The counts beside the rows of an area; none if they were left out.
   *
   * @throws UnusableArgument if there are not as many
   */
  public static List<Argument> counts(Given given, int rows) {
    List<Argument> counts = given.cells("pieces");
    if (!counts.isEmpty() && counts.size() != rows) {
      throw new UnusableArgument(
          "pieces", "expected one cell for each of the " + rows + " coins, found " + counts.size());
    }
    return counts;
  }

  private static Outcome pieces(Given given) {
    Optional<Coin> coin = Coins.standard().of(given);
    if (given.at("pieces").saysNothing() || coin.isEmpty()) {
      return Outcome.BLANK;
    }
    return coin.get()
        .pieces()
        .map(number -> Outcome.number(BigDecimal.valueOf(number)))
        .orElseGet(
            () ->
                Outcome.text(
                    coin.get().remark().isEmpty()
                        ? "the number of pieces is not known"
                        : coin.get().remark()));
  }
}
