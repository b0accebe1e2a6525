package fineweight.identification.weighing;

import fineweight.clue.Clue;
import fineweight.clue.Clues;
import fineweight.clue.FieldRole;
import fineweight.clue.Measures;
import fineweight.clue.MetalWords;
import fineweight.clue.TypeName;
import fineweight.clue.word.Word;
import fineweight.identification.candidate.MeasureMatch;
import fineweight.identification.candidate.MetalMatch;
import fineweight.identification.candidate.Profile;
import fineweight.identification.candidate.When;
import fineweight.standard.CoinStandard;
import fineweight.standard.Mints;
import fineweight.standard.Tell;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Weighs the clues of one row, for one date, against the standards still open. */
public final class Weighing {
  private final Clues clues;
  private final When when;
  private final Working working;
  private final Telling telling;
  private final Set<String> said = new HashSet<>();

  private Weighing(Clues clues, When when, Working working) {
    this.clues = clues;
    this.when = when;
    this.working = working;
    this.telling = new Telling(clues, when);
    for (List<Word> passage : clues.wording().passages()) {
      passage.forEach(word -> said.add(word.text()));
    }
  }

  /** Narrows what is open in the working; contradictions and remarks are noted there. */
  public static void weigh(Clues clues, When when, Working working) {
    Weighing weighing = new Weighing(clues, when, working);
    weighing.mint();
    weighing.types();
    weighing.eligible();
    weighing.typeNames();
    MetalWeighing.weigh(clues, working);
    weighing.tells();
    MeasureWeighing.weigh(clues.physical().measures(), working);
    ScaleRemarks.add(clues.physical().measures(), when, working);
    MarkRemarks.add(clues, working);
  }

  /** Whether metal words, fineness, types and mass agree with a standard, whatever its date. */
  public static boolean fits(Clues clues, Profile profile) {
    CoinStandard standard = profile.standard();
    MetalWords metal = clues.physical().metal();
    Measures measures = clues.physical().measures();
    return metal.said().stream().allMatch(clue -> MetalMatch.metal(standard, clue.value()))
        && metal.fineness().map(clue -> MetalMatch.fineness(standard, clue.value())).orElse(true)
        && clues.types().stream()
            .allMatch(type -> type.from() == FieldRole.NOTES || profile.hasType(type.value()))
        && measures.mass().map(clue -> MeasureMatch.mass(standard, clue.value())).orElse(true);
  }

  private void mint() {
    if (clues.mint().isEmpty()) {
      return;
    }
    String letters = clues.mint().get().value();
    boolean known =
        working.narrow(
            profile -> allows(profile.standard().issue().mints(), letters),
            letters.isEmpty() ? "no mint mark" : "mint mark " + letters);
    if (!known) {
      working.remark("no coin of this date with mint mark " + letters + " is in the catalogue");
    }
  }

  private boolean allows(Mints mints, String letters) {
    if (when.year().isPresent()) {
      return mints.allow(letters, when.year().getAsInt());
    }
    return mints.marks().isEmpty()
        || mints.marks().stream()
            .anyMatch(mark -> letters.isEmpty() ? mark.orNone() : mark.letters().equals(letters));
  }

  /** Types said: those that have all of them, or else those that have one. */
  private void types() {
    List<Clue<TypeName>> types = clues.types();
    if (types.isEmpty()) {
      return;
    }
    String words = "type \"" + types.get(0).words() + "\"";
    boolean all =
        working.narrow(
            profile -> types.stream().allMatch(type -> profile.hasType(type.value())), words);
    if (!all) {
      List<Clue<TypeName>> firm =
          types.stream().filter(type -> type.from() != FieldRole.NOTES).toList();
      for (Clue<TypeName> type :
          firm.size() > 1 && isList(firm) ? List.<Clue<TypeName>>of() : types) {
        working.narrow(profile -> profile.hasType(type.value()), "type \"" + type.words() + "\"");
      }
      working.narrow(
          profile -> firm.stream().anyMatch(type -> profile.hasType(type.value())), words);
    }
  }

  /** "Morgan and Peace": each names other coins that are open. */
  private boolean isList(List<Clue<TypeName>> types) {
    return types.stream()
        .allMatch(type -> working.open().stream().anyMatch(p -> p.hasType(type.value())));
  }

  /** Collectors' issues and bullion are thought of only when something points at them. */
  private void eligible() {
    List<Profile> kept = new ArrayList<>();
    List<Profile> dropped = new ArrayList<>();
    for (Profile profile : working.open()) {
      (isEligible(profile) ? kept : dropped).add(profile);
    }
    if (!kept.isEmpty() && !dropped.isEmpty()) {
      boolean base = kept.stream().noneMatch(p -> p.standard().specification().isPrecious());
      if (when.equals(When.ANY) && base) {
        dropped.stream().filter(Weighing::isStruckForUseToo).forEach(kept::add);
      }
      working.set(kept);
    }
  }

  /** Without a date, silver that circulates too cannot be left out of thought. */
  private static boolean isStruckForUseToo(Profile profile) {
    return profile.ounces().isEmpty()
        && profile.standard().distinction().tells().stream()
            .anyMatch(tell -> tell.phrase().equals("uncirculated"));
  }

  private boolean isEligible(Profile profile) {
    boolean worn = clues.condition().mark("worn-slick").isPresent();
    if (profile.ounces().isPresent() && (worn || !isPointedAt(profile))) {
      return false;
    }
    List<Tell> onlyIf =
        profile.standard().distinction().onlyIf().stream()
            .filter(tell -> when.within(tell.years()))
            .toList();
    return onlyIf.isEmpty() || onlyIf.stream().anyMatch(telling::mayHold);
  }

  private boolean isPointedAt(Profile bullion) {
    return clues.physical().measures().statedOunces().isPresent()
        || clues.types().stream().anyMatch(type -> bullion.hasType(type.value()))
        || bullion.isNamedIn(said, when)
        || isPlainGold(bullion);
  }

  /** "1986 $5 gold" and no word about an occasion: the bullion coin bears that face value too. */
  private boolean isPlainGold(Profile bullion) {
    boolean occasion =
        clues.condition().mark("design").isPresent()
            || clues.condition().mark("commemorative").isPresent();
    return bullion.isGold()
        && !occasion
        && clues.types().isEmpty()
        && clues.mint().isEmpty()
        && clues.wording().leftOver().isEmpty()
        && clues.physical().metal().said().stream().anyMatch(clue -> clue.value().equals("Au"));
  }

  private void typeNames() {
    working.narrow(profile -> profile.isNamedIn(said, when), "words of the type's name");
  }

  private void tells() {
    List<Profile> told = working.open().stream().filter(this::isTold).toList();
    if (!told.isEmpty()) {
      working.narrow(told::contains, "words that tell the variety");
    }
    working.narrow(
        profile -> profile.standard().distinction().tells().stream().noneMatch(telling::isDenied),
        "words that rule a variety out");
  }

  private boolean isTold(Profile profile) {
    return profile.standard().distinction().tells().stream()
        .anyMatch(tell -> telling.holds(tell) && !isOthersName(tell.phrase(), profile));
  }

  /** What is another's name too, such as "double eagle" or "Morgan", points at none. */
  private boolean isOthersName(String phrase, Profile profile) {
    return working.open().stream()
        .anyMatch(
            other ->
                other != profile && (other.isDenominatedWith(phrase) || other.isTyped(phrase)));
  }
}
