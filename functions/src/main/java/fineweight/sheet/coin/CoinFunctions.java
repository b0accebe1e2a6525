package fineweight.sheet.coin;

import fineweight.column.Appraisal.Figures;
import fineweight.column.RowState;
import fineweight.quantity.Fineness;
import fineweight.quantity.Mass;
import fineweight.sheet.function.Calculation;
import fineweight.sheet.function.Outcome;
import fineweight.sheet.function.Parameter;
import fineweight.sheet.function.SheetFunction;
import fineweight.sheet.function.SheetFunction.Texts;
import fineweight.standard.Certainty;
import fineweight.standard.CoinStandard;
import fineweight.standard.Evidence;
import fineweight.standard.Sources;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Functions that say what one piece is. */
public final class CoinFunctions {
  private static final String NOT_KNOWN_TEXT = "\"not known: \" and why";
  private static final String NOT_KNOWN_NUMBER =
      "#N/A where the coin is not known; the lowest where several are possible";

  private CoinFunctions() {}

  /** The functions in the order of the reference. */
  public static List<SheetFunction> all() {
    return List.of(standard(), state(), metal(), fineness(), grossMass(), question(), citation());
  }

  private static SheetFunction standard() {
    return about(
        "standard",
        "The standard that a coin was struck to.",
        "\"1964 half dollar\"",
        "the id of the standard; several ids parted by \" or \" where the words leave it open",
        NOT_KNOWN_TEXT,
        ofWords(CoinFunctions::standards));
  }

  private static SheetFunction state() {
    return about(
        "state",
        "How far a coin is known.",
        "\"1964 half dollar\"",
        "valued, several, not known, or nothing to value",
        "an empty text for an empty cell",
        ofCoin(coin -> Outcome.text(word(coin.state()))));
  }

  private static SheetFunction metal() {
    return about(
        "metal",
        "The metal of a coin.",
        "\"1964 half dollar\"",
        "the metals in words; with \" or \" between where the words leave it open",
        NOT_KNOWN_TEXT,
        ofWords(coin -> distinct(coin.possible().stream().map(Figures::metal).toList())));
  }

  private static SheetFunction fineness() {
    return about(
        "fineness",
        "The fineness of a coin: the parts per thousand of its main precious metal.",
        "\"1964 half dollar\"",
        "parts per thousand, 0 to 1000; 0 without a precious metal",
        NOT_KNOWN_NUMBER,
        ofCoin(coin -> least(coin, CoinFunctions::fineness)));
  }

  private static SheetFunction grossMass() {
    return about(
        "grossMass",
        "The whole mass of one piece as struck.",
        "\"1964 half dollar\"",
        "grams",
        NOT_KNOWN_NUMBER + "; #N/A where the catalogue knows no mass",
        ofCoin(coin -> least(coin, CoinFunctions::gross)));
  }

  private static SheetFunction question() {
    return about(
        "question",
        "What must be looked at to settle what a coin is.",
        "\"1967 10 cents Canada\"",
        "the question where several coins are possible, the reason where none is known, an empty"
            + " text where nothing is open",
        "an empty text",
        ofCoin(coin -> Outcome.text(coin.remark())));
  }

  private static SheetFunction citation() {
    return about(
        "citation",
        "The text that the figures of a coin rest on.",
        "\"1964 half dollar\"",
        "place and title of the sources, and how well they support the figures",
        NOT_KNOWN_TEXT,
        ofWords(CoinFunctions::citations));
  }

  private static SheetFunction about(
      String method,
      String purpose,
      String coin,
      String result,
      String misses,
      Calculation calculation) {
    List<Parameter> parameters = new ArrayList<>();
    parameters.add(Coins.COIN);
    parameters.addAll(Coins.PARTS);
    String name = SheetFunction.PREFIX + "." + method.toUpperCase(java.util.Locale.ROOT);
    return new SheetFunction(
        method,
        parameters,
        new Texts(purpose, name + "(" + coin + ")", result, misses),
        calculation);
  }

  private static Calculation ofCoin(Function<Coin, Outcome> answer) {
    return given -> Coins.standard().of(given).map(answer).orElse(Outcome.BLANK);
  }

  /** Words about a coin, or why there are none. */
  private static Calculation ofWords(Function<Coin, String> words) {
    return ofCoin(
        coin -> {
          String answer = words.apply(coin);
          return Outcome.text(answer.isEmpty() ? reason(coin) : answer);
        });
  }

  private static String reason(Coin coin) {
    return coin.state() == RowState.NOTHING
        ? word(RowState.NOTHING)
        : "not known: " + coin.remark();
  }

  private static String word(RowState state) {
    return state == RowState.NOTHING ? "nothing to value" : plain(state);
  }

  private static String plain(RowState state) {
    return state == RowState.SEVERAL ? "several" : state.words();
  }

  private static String standards(Coin coin) {
    return distinct(coin.standards().stream().map(CoinStandard::id).toList());
  }

  private static String distinct(List<String> words) {
    Set<String> once = new LinkedHashSet<>(words);
    once.remove("");
    return String.join(" or ", once);
  }

  private static Optional<BigDecimal> fineness(Figures figures) {
    return Optional.of(figures.fineness().map(Fineness::perMille).orElse(BigDecimal.ZERO));
  }

  private static Optional<BigDecimal> gross(Figures figures) {
    return figures.gross().map(Mass::grams);
  }

  /** The lowest of those possible; none if one of them is not known. */
  private static Outcome least(Coin coin, Function<Figures, Optional<BigDecimal>> figure) {
    List<Optional<BigDecimal>> all = coin.possible().stream().map(figure).toList();
    boolean known = !all.isEmpty() && all.stream().allMatch(Optional::isPresent);
    return known
        ? Outcome.number(all.stream().flatMap(Optional::stream).min(BigDecimal::compareTo).get())
        : Outcome.NOT_AVAILABLE;
  }

  private static String citations(Coin coin) {
    boolean several = coin.standards().size() > 1;
    List<String> lines = new ArrayList<>();
    for (CoinStandard standard : coin.standards()) {
      lines.add((several ? standard.id() + ": " : "") + citation(standard.evidence()));
    }
    return lines.isEmpty() && !coin.possible().isEmpty()
        ? coin.possible().get(0).ground()
        : String.join("; ", lines);
  }

  private static String citation(Evidence evidence) {
    if (evidence.certainty() == Certainty.MEMORY && evidence.sources().isEmpty()) {
      return "from memory, no text was found";
    }
    List<String> texts = new ArrayList<>();
    for (String key : evidence.sources()) {
      texts.add(Sources.citation(key).orElse(key));
    }
    String locator = evidence.locator().isEmpty() ? "" : " [" + evidence.locator() + "]";
    return String.join("; ", texts) + locator + ", " + evidence.certainty().words();
  }
}
