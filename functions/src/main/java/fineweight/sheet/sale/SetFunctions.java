package fineweight.sheet.sale;

import fineweight.clue.Clue;
import fineweight.clue.Clues;
import fineweight.clue.Dating;
import fineweight.grade.Condition;
import fineweight.grade.Grade;
import fineweight.sheet.coin.Coin;
import fineweight.sheet.coin.Coins;
import fineweight.sheet.coin.FineFunctions;
import fineweight.sheet.function.Argument;
import fineweight.sheet.function.Given;
import fineweight.sheet.function.Outcome;
import fineweight.sheet.function.Parameter;
import fineweight.sheet.function.SheetFunction;
import fineweight.sheet.function.SheetFunction.Texts;
import fineweight.typeset.CollectedPiece;
import fineweight.typeset.SetReview;
import fineweight.typeset.Standing;
import fineweight.typeset.TypeEntry;
import fineweight.typeset.TypeSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Functions about the set of the United States by design. */
public final class SetFunctions {
  /** Remarks that make a piece worth less than its grade. */
  private static final List<String> DAMAGE =
      List.of(
          "damaged",
          "holed",
          "mounted",
          "cleaned",
          "polished",
          "plugged",
          "corroded",
          "scratched",
          "cut",
          "colored",
          "environmental");

  private SetFunctions() {}

  /** Read on first use. */
  private static final class Loaded {
    static final TypeSet SET = TypeSet.unitedStates();
  }

  /** The functions in the order of the reference. */
  public static List<SheetFunction> all() {
    List<Parameter> parameters = new ArrayList<>();
    parameters.add(Coins.COIN);
    parameters.addAll(Coins.PARTS);
    return List.of(
        new SheetFunction(
            "setPlace",
            parameters,
            new Texts(
                "The place that a coin fills in a set of the United States by design.",
                "FINEWEIGHT.SETPLACE(\"1964 half dollar\")",
                "denomination and design; several parted by \" or \"",
                "not in the set; or \"not known: \" and why"),
            given -> Coins.standard().of(given).map(SetFunctions::place).orElse(Outcome.BLANK)),
        new SheetFunction(
            "setStatus",
            List.of(FineFunctions.COINS),
            new Texts(
                "What each row of a collection does for that set, by one matrix formula.",
                "FINEWEIGHT.SETSTATUS(A2:A500)",
                "a column: fills a hole, improves, duplicate, open, or not in the set; rows earlier"
                    + " in the list come first",
                "not known where the coin is not known; blank for a blank row"),
            SetFunctions::status));
  }

  private static Outcome place(Coin coin) {
    if (coin.standards().isEmpty()) {
      return Outcome.text("not known: " + coin.remark());
    }
    List<TypeEntry> places = Loaded.SET.placesFor(piece(coin));
    return Outcome.text(
        places.isEmpty()
            ? "not in the set"
            : String.join(" or ", places.stream().map(TypeEntry::words).toList()));
  }

  private static Outcome status(Given given) {
    List<Optional<Coin>> coins = new ArrayList<>();
    for (List<Argument> row : given.rows("coins")) {
      coins.add(Coins.standard().of(row, Optional.empty()));
    }
    if (coins.isEmpty()) {
      return Outcome.BLANK;
    }
    List<Optional<Coin>> known =
        coins.stream().filter(each -> each.filter(SetFunctions::isKnown).isPresent()).toList();
    List<Standing> standings =
        SetReview.of(Loaded.SET, known.stream().map(each -> piece(each.get())).toList())
            .standings();
    List<Outcome> column = new ArrayList<>();
    int next = 0;
    for (Optional<Coin> coin : coins) {
      if (coin.isEmpty()) {
        column.add(Outcome.BLANK);
      } else if (isKnown(coin.get())) {
        column.add(Outcome.text(standings.get(next++).status().words()));
      } else {
        column.add(Outcome.text("not known"));
      }
    }
    return Outcome.column(column);
  }

  private static boolean isKnown(Coin coin) {
    return !coin.standards().isEmpty();
  }

  private static CollectedPiece piece(Coin coin) {
    Optional<Clues> clues = coin.clues();
    OptionalInt year =
        clues
            .map(Clues::dating)
            .filter(dating -> dating.kind() == Dating.Kind.YEARS && dating.years().size() == 1)
            .map(dating -> OptionalInt.of(dating.years().get(0)))
            .orElse(OptionalInt.empty());
    return new CollectedPiece(
        "",
        coin.standards(),
        year,
        clues.flatMap(Clues::mint).map(Clue::value),
        Optional.empty(),
        clues.map(SetFunctions::condition).orElse(Condition.UNKNOWN),
        1,
        Optional.empty());
  }

  private static Condition condition(Clues clues) {
    return new Condition(
        clues.condition().grade().map(grade -> Grade.of(grade.value())),
        clues.condition().certificate().isPresent(),
        DAMAGE.stream().anyMatch(kind -> clues.condition().mark(kind).isPresent()));
  }
}
