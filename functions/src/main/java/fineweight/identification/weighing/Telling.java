package fineweight.identification.weighing;

import fineweight.clue.Clues;
import fineweight.identification.candidate.When;
import fineweight.standard.Tell;
import java.util.Map;
import java.util.Optional;

/** Whether the words that set one standard apart from another are said in a row. Immutable. */
record Telling(Clues clues, When when) {
  private static final Map<String, String> METALS =
      Map.of("silver", "Ag", "gold", "Au", "platinum", "Pt", "palladium", "Pd");

  /** Whether a tell may hold for the date and stands in the words. */
  boolean mayHold(Tell tell) {
    return when.within(tell.years()) && isSaid(tell.phrase());
  }

  /** Whether a tell surely holds for the date and stands in the words. */
  boolean holds(Tell tell) {
    return when.isWithin(tell.years()) && isSaid(tell.phrase());
  }

  /** Whether the words deny it: "no arrows". */
  boolean isDenied(Tell tell) {
    return when.isWithin(tell.years())
        && !tell.phrase().startsWith("no ")
        && clues.wording().denies(tell.phrase());
  }

  private boolean isSaid(String phrase) {
    if (phrase.startsWith("mint ") && phrase.length() <= 8) {
      String letters = phrase.substring(5).strip();
      return clues.mint().filter(mint -> mint.value().equalsIgnoreCase(letters)).isPresent();
    }
    if (phrase.startsWith("no ")) {
      return clues.wording().denies(phrase.substring(3)) || clues.wording().says(phrase);
    }
    if (phrase.equals("proof") && isProof()) {
      return true;
    }
    // "silver jubilee" says the word and not the metal.
    Optional<String> metal = Optional.ofNullable(METALS.get(phrase));
    return metal.map(this::isMetalSaid).orElseGet(() -> clues.wording().says(phrase));
  }

  private boolean isProof() {
    return clues.condition().mark("proof").isPresent()
        || clues.condition().mark("silver-proof").isPresent()
        || clues.condition().mark("clad-proof").isPresent();
  }

  private boolean isMetalSaid(String symbol) {
    return clues.physical().metal().said().stream().anyMatch(clue -> clue.value().equals(symbol));
  }
}
