package fineweight.identification;

import fineweight.clue.Clue;
import fineweight.clue.Clues;
import fineweight.clue.Dating;
import fineweight.clue.Denomination;
import fineweight.clue.FieldRole;
import fineweight.clue.Quantity;
import fineweight.clue.lexicon.Face;
import fineweight.identification.candidate.When;
import fineweight.quantity.Fineness;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Undated dimes, quarters and half dollars of the United States that are called 90 % silver. All of
 * 1873 to 1964 have the same silver for each dollar of face value: 25 g of 900 silver, 0.7234 troy
 * ounces (Coinage Act of 1873, sec. 15; Revised Statutes sec. 3514).
 */
final class JunkSilver {
  /** The years after the change of 1873. */
  static final When YEARS = new When(1874, 1964);

  static final List<String> REMARKS =
      List.of(
          "undated 90 % silver is counted as struck from 1873 to 1964: 0.7234 ozt for each $1 of face"
              + " value; bags of worn coins trade as 0.715 ozt");

  private static final Fineness COIN_SILVER = Fineness.ofPerMille("900");

  /** Stands for any of them where the words name none or several. */
  private static final Face DIME = new Face.Amount(new BigDecimal("0.1"), "dollar");

  private static final Set<Face> FACES =
      Set.of(
          DIME,
          new Face.Amount(new BigDecimal("0.25"), "dollar"),
          new Face.Amount(new BigDecimal("0.5"), "dollar"));

  private JunkSilver() {}

  /** The clues with the coin to count by; empty if the row is about something else. */
  static Optional<Clues> of(Clues clues, String home) {
    boolean american =
        clues
            .country()
            .map(country -> country.value().keys().contains("US"))
            .orElse(home.equals("US"));
    boolean undated = clues.dating().kind() == Dating.Kind.UNSAID;
    if (!american || !undated || !isCalledSo(clues)) {
      return Optional.empty();
    }
    boolean small =
        clues.denominations().stream()
            .allMatch(clue -> clue.value().faces().stream().anyMatch(FACES::contains));
    boolean byFace = clues.quantity().value() instanceof Quantity.FaceValue;
    if (!small || (clues.denominations().isEmpty() && (!byFace || !clues.types().isEmpty()))) {
      return Optional.empty();
    }
    return Optional.of(
        byFace && clues.denominations().size() != 1 ? clues.withDenominations(dime(clues)) : clues);
  }

  private static boolean isCalledSo(Clues clues) {
    boolean fine =
        clues
            .physical()
            .metal()
            .fineness()
            .filter(clue -> clue.value().compareTo(COIN_SILVER) == 0)
            .isPresent();
    boolean silverByFace =
        clues.quantity().value() instanceof Quantity.FaceValue
            && clues.physical().metal().said().stream().anyMatch(clue -> clue.value().equals("Ag"));
    boolean otherFineness = clues.physical().metal().fineness().isPresent() && !fine;
    return fine || clues.condition().mark("junk").isPresent() || (silverByFace && !otherFineness);
  }

  private static List<Clue<Denomination>> dime(Clues clues) {
    return List.of(
        new Clue<>(
            new Denomination(List.of(DIME), Set.of("US"), Optional.empty()),
            clues.quantity().words(),
            FieldRole.DESCRIPTION));
  }
}
