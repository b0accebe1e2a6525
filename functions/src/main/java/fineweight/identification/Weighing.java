package fineweight.identification;

import fineweight.clue.Clue;
import fineweight.clue.Clues;
import fineweight.clue.FieldRole;
import fineweight.clue.Measures;
import fineweight.clue.MetalWords;
import fineweight.clue.TypeName;
import fineweight.clue.word.Word;
import fineweight.quantity.Fineness;
import fineweight.quantity.Mass;
import fineweight.standard.CoinStandard;
import fineweight.standard.Tell;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Weighs the clues of one row, for one date, against the standards still open. */
final class Weighing {
  private static final Map<String, String> METAL_TELLS =
      Map.of("silver", "Ag", "gold", "Au", "platinum", "Pt", "palladium", "Pd");

  private final Clues clues;
  private final When when;
  private final Working working;
  private final Set<String> said = new HashSet<>();

  /** What contradicts all that is open, as a sentence; null while all agrees. */
  private String contradiction;

  Weighing(Clues clues, When when, Working working) {
    this.clues = clues;
    this.when = when;
    this.working = working;
    for (List<Word> passage : clues.wording().passages()) {
      passage.forEach(word -> said.add(word.text()));
    }
  }

  /** Whether metal words, fineness and mass agree with a standard, whatever its date. */
  static boolean fits(Clues clues, Profile profile) {
    CoinStandard standard = profile.standard();
    MetalWords metal = clues.physical().metal();
    boolean metals =
        metal.said().stream().allMatch(clue -> MetalMatch.metal(standard, clue.value()));
    boolean fine =
        metal.fineness().map(clue -> MetalMatch.fineness(standard, clue.value())).orElse(true);
    boolean types =
        clues.types().stream()
            .allMatch(type -> type.from() == FieldRole.NOTES || profile.hasType(type.value()));
    boolean mass =
        clues
            .physical()
            .measures()
            .mass()
            .map(clue -> MeasureMatch.mass(standard, clue.value()))
            .orElse(true);
    return metals && fine && types && mass;
  }

  Optional<String> contradiction() {
    return Optional.ofNullable(contradiction);
  }

  void weigh() {
    mint();
    eligible();
    types();
    metals();
    tells();
    measures();
  }

  private void mint() {
    if (clues.mint().isEmpty()) {
      return;
    }
    Clue<String> mint = clues.mint().get();
    boolean known =
        working.narrow(
            profile -> allows(profile, mint.value()),
            mint.value().isEmpty() ? "no mint mark" : "mint mark " + mint.value());
    if (!known) {
      working.remark(
          "no coin of this date with mint mark " + mint.value() + " is in the catalogue");
    }
  }

  private boolean allows(Profile profile, String letters) {
    if (when.year().isPresent()) {
      return profile.standard().issue().mints().allow(letters, when.year().getAsInt());
    }
    return profile.standard().issue().mints().marks().isEmpty()
        || profile.standard().issue().mints().marks().stream()
            .anyMatch(mark -> letters.isEmpty() ? mark.orNone() : mark.letters().equals(letters));
  }

  /** Collectors' issues and bullion are thought of only when something points at them. */
  private void eligible() {
    List<Profile> kept = working.open().stream().filter(this::isEligible).toList();
    if (!kept.isEmpty() && kept.size() < working.open().size()) {
      working.set(kept);
    }
  }

  private boolean isEligible(Profile profile) {
    boolean bullion = profile.ounces().isPresent();
    if (bullion) {
      boolean pointed =
          clues.physical().measures().statedOunces().isPresent()
              || clues.types().stream().anyMatch(type -> profile.hasType(type.value()))
              || profile.typeWordsIn(said, when) > 0;
      if (!pointed) {
        return false;
      }
    }
    List<Tell> onlyIf = profile.standard().distinction().onlyIf();
    return onlyIf.isEmpty() || onlyIf.stream().anyMatch(this::isSaid);
  }

  /** Whether a tell holds for the date and stands in the words. */
  private boolean isSaid(Tell tell) {
    if (!when.within(tell.years())) {
      return false;
    }
    String phrase = tell.phrase();
    if (phrase.startsWith("mint ") && phrase.length() <= 8) {
      return clues
          .mint()
          .filter(mint -> mint.value().equalsIgnoreCase(phrase.substring(5).strip()))
          .isPresent();
    }
    if (phrase.startsWith("no ")) {
      return clues.wording().denies(phrase.substring(3)) || clues.wording().says(phrase);
    }
    if (phrase.equals("proof") && clues.condition().mark("proof").isPresent()) {
      return true;
    }
    String metal = METAL_TELLS.get(phrase);
    if (metal != null
        && clues.physical().metal().said().stream().anyMatch(clue -> clue.value().equals(metal))) {
      return true;
    }
    return clues.wording().says(phrase);
  }

  private boolean isDenied(Tell tell) {
    return when.within(tell.years())
        && !tell.phrase().startsWith("no ")
        && clues.wording().denies(tell.phrase());
  }

  private void types() {
    for (Clue<TypeName> type : clues.types()) {
      working.narrow(profile -> profile.hasType(type.value()), "type \"" + type.words() + "\"");
    }
    long most =
        working.open().stream()
            .mapToLong(profile -> profile.typeWordsIn(said, when))
            .max()
            .orElse(0);
    if (most > 0) {
      working.narrow(profile -> profile.typeWordsIn(said, when) > 0, "words of the type's name");
    }
  }

  private void metals() {
    MetalWords metal = clues.physical().metal();
    for (Clue<String> clue : metal.said()) {
      boolean agrees =
          working.narrow(
              profile -> MetalMatch.metal(profile.standard(), clue.value()),
              "metal \"" + clue.words() + "\"");
      if (!agrees) {
        against(clue.from(), "the words say \"" + clue.words() + "\"");
      }
    }
    for (Clue<String> clue : metal.denied()) {
      boolean agrees =
          working.narrow(
              profile -> !MetalMatch.metal(profile.standard(), clue.value()),
              "not \"" + clue.words() + "\"");
      if (!agrees) {
        against(clue.from(), "the words say not \"" + clue.words() + "\"");
      }
    }
    if (metal.fineness().isPresent()) {
      Clue<Fineness> fineness = metal.fineness().get();
      boolean agrees =
          working.narrow(
              profile -> MetalMatch.fineness(profile.standard(), fineness.value()),
              "fineness " + fineness.words());
      if (!agrees) {
        against(fineness.from(), "the words say \"" + fineness.words() + "\"");
      }
    }
  }

  /** A remark in the notes may be about something else; the other fields are about the coin. */
  private void against(FieldRole from, String sentence) {
    if (from == FieldRole.NOTES) {
      working.remark(sentence + ", which does not fit this coin");
    } else if (contradiction == null) {
      contradiction = sentence;
    }
  }

  private void tells() {
    boolean someTold = working.open().stream().anyMatch(this::isTold);
    if (someTold) {
      working.narrow(this::isTold, "words that tell the variety");
    }
    working.narrow(
        profile -> profile.standard().distinction().tells().stream().noneMatch(this::isDenied),
        "words that rule a variety out");
  }

  private boolean isTold(Profile profile) {
    return profile.standard().distinction().tells().stream().anyMatch(this::isSaid);
  }

  private void measures() {
    Measures measures = clues.physical().measures();
    Optional<Clue<Mass>> mass =
        measures.mass().isPresent() ? measures.mass() : measures.statedMass();
    mass.ifPresent(this::mass);
    measures.diameterMillimetres().ifPresent(this::diameter);
    measures.magnetic().ifPresent(this::magnet);
  }

  private void mass(Clue<Mass> measured) {
    Mass mass = measured.value();
    List<Profile> fit =
        working.open().stream().filter(p -> MeasureMatch.mass(p.standard(), mass)).toList();
    if (fit.isEmpty()) {
      contradiction = contradiction == null ? misfit(mass) : contradiction;
      return;
    }
    BigDecimal best =
        fit.stream()
            .map(p -> MeasureMatch.distance(p.standard(), mass))
            .min(BigDecimal::compareTo)
            .orElseThrow();
    working.narrow(
        profile ->
            MeasureMatch.mass(profile.standard(), mass)
                && MeasureMatch.isClose(MeasureMatch.distance(profile.standard(), mass), best),
        "mass " + mass);
  }

  private String misfit(Mass mass) {
    CoinStandard first = working.open().get(0).standard();
    String expected =
        first.specification().grossMass().map(gross -> round(gross) + " g").orElse("another mass");
    return mass + " does not fit " + expected;
  }

  private static String round(Mass mass) {
    return mass.grams()
        .setScale(2, java.math.RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  private void diameter(Clue<BigDecimal> measured) {
    boolean agrees =
        working.narrow(
            profile -> MeasureMatch.diameter(profile.standard(), measured.value()),
            "diameter " + measured.value().toPlainString() + " mm");
    if (!agrees) {
      working.remark(
          "the diameter "
              + measured.value().toPlainString()
              + " mm does not fit: have the piece looked at");
    }
  }

  private void magnet(Clue<Boolean> magnet) {
    boolean attracted = magnet.value();
    boolean agrees =
        working.narrow(
            profile ->
                profile
                    .standard()
                    .specification()
                    .magnetic()
                    .map(known -> known == attracted)
                    .orElse(true),
            attracted ? "a magnet attracts it" : "a magnet does not attract it");
    if (!agrees && contradiction == null) {
      contradiction =
          attracted
              ? "a magnet attracts it, so it is not this coin of silver or gold"
              : "no magnet attracts it, though this coin is magnetic";
    }
  }
}
