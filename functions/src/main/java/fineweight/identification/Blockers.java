package fineweight.identification;

import fineweight.clue.Clue;
import fineweight.clue.Clues;
import fineweight.clue.Condition;
import fineweight.clue.Dating;
import fineweight.clue.Issuers;
import fineweight.identification.Identification.NoStandard;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Things that are not valued by a standard, whatever else the words say. */
final class Blockers {
  /** Remarks after which no metal is counted, with the reason. */
  private static final Map<String, String> NOT_BY_METAL =
      Map.of(
          "copy", "the words call it a copy or doubtful piece: its metal is unknown",
          "plated", "the words say plated or gilt: a coating is no silver and no gold",
          "not-silver", "the words name an alloy without silver in spite of its name",
          "banknote", "paper money holds no metal",
          "token", "a token or medal has no standard; give metal, fineness and mass to compute it",
          "ancient", "ancient and hammered coins have no fixed standard");

  private static final List<String> ORDER =
      List.of("copy", "plated", "not-silver", "banknote", "ancient", "token");

  private Blockers() {}

  static Optional<Identification> find(Clues clues, Reasons reasons) {
    Optional<Identification> byMark = byMark(clues, reasons);
    if (byMark.isPresent()) {
      return byMark;
    }
    Optional<Identification> byCountry = byCountry(clues, reasons);
    if (byCountry.isPresent()) {
      return byCountry;
    }
    return byDate(clues.dating(), reasons);
  }

  private static Optional<Identification> byMark(Clues clues, Reasons reasons) {
    Condition condition = clues.condition();
    for (String kind : ORDER) {
      Optional<Clue<String>> mark = condition.mark(kind);
      boolean aside =
          (kind.equals("token") && StatedPiece.isComputable(clues))
              || (kind.equals("not-silver") && !clues.denominations().isEmpty());
      if (mark.isPresent() && !aside) {
        return none(
            NoStandard.Kind.NOT_BY_METAL,
            NOT_BY_METAL.get(kind) + " (\"" + mark.get().words() + "\")",
            reasons);
      }
    }
    Optional<Clue<String>> unlisted = condition.mark("unlisted");
    if (unlisted.isPresent() && !isElsewhere(clues)) {
      return none(
          NoStandard.Kind.NOT_KNOWN,
          "the catalogue has no standard of this coinage (\"" + unlisted.get().words() + "\")",
          reasons);
    }
    return condition
        .mark("set")
        .flatMap(
            set ->
                none(
                    NoStandard.Kind.NOT_KNOWN,
                    "a set of several coins (\""
                        + set.words()
                        + "\"): give each coin a row of its own",
                    reasons));
  }

  /** "colonial" is unlisted in the United States; other countries' colonial coins are listed. */
  private static boolean isElsewhere(Clues clues) {
    return clues
        .country()
        .filter(country -> !country.value().keys().isEmpty())
        .filter(country -> !country.value().keys().contains("US"))
        .isPresent();
  }

  private static Optional<Identification> byCountry(Clues clues, Reasons reasons) {
    Optional<Clue<Issuers>> country = clues.country();
    if (country.isEmpty() || !country.get().value().keys().isEmpty()) {
      return Optional.empty();
    }
    String words = country.get().words();
    return switch (country.get().value().kind()) {
      case "ancient" ->
          none(
              NoStandard.Kind.NOT_BY_METAL,
              NOT_BY_METAL.get("ancient") + " (\"" + words + "\")",
              reasons);
      case "token" ->
          none(
              NoStandard.Kind.NOT_BY_METAL,
              "emergency money and tokens have no standard (\"" + words + "\")",
              reasons);
      case "unknown" ->
          StatedPiece.isComputable(clues)
              ? Optional.empty()
              : none(
                  NoStandard.Kind.NOT_KNOWN,
                  "the country \"" + words + "\" is not understood",
                  reasons);
      default ->
          none(NoStandard.Kind.NOT_KNOWN, "the catalogue has no standard of " + words, reasons);
    };
  }

  private static Optional<Identification> byDate(Dating dating, Reasons reasons) {
    return switch (dating.kind()) {
      case ANCIENT ->
          none(
              NoStandard.Kind.NOT_BY_METAL,
              NOT_BY_METAL.get("ancient") + " (\"" + dating.words() + "\")",
              reasons);
      case IMPOSSIBLE ->
          none(
              NoStandard.Kind.NOT_KNOWN,
              "\"" + dating.words() + "\" is no date that a coin bears",
              reasons);
      case UNREADABLE ->
          none(
              NoStandard.Kind.NOT_KNOWN,
              "the date \"" + dating.words() + "\" is not understood",
              reasons);
      default -> Optional.empty();
    };
  }

  static Optional<Identification> none(NoStandard.Kind kind, String reason, Reasons reasons) {
    return Optional.of(new NoStandard(kind, reason, reasons));
  }
}
