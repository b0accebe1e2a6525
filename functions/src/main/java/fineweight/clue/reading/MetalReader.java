package fineweight.clue.reading;

import fineweight.clue.Clue;
import fineweight.clue.FieldRole;
import fineweight.clue.MetalWords;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.passage.Hit;
import fineweight.clue.passage.Passage;
import fineweight.clue.word.NumberText;
import fineweight.clue.word.Word;
import fineweight.quantity.Fineness;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads metals and fineness. */
final class MetalReader {
  private static final Pattern DECIMAL = Pattern.compile("0?[.,]\\d{2,4}");
  private static final Pattern PER_MILLE = Pattern.compile("[2-9]\\d{2}([.,]\\d)?");
  private static final Pattern HIGH_PER_MILLE = Pattern.compile("9\\d\\d([.,]\\d)?");

  private static final BigDecimal ONE = BigDecimal.ONE;
  private static final BigDecimal HUNDRED = new BigDecimal("100");
  private static final BigDecimal THOUSAND = new BigDecimal("1000");
  private static final Set<String> FINE_WORDS =
      Set.of("fine", "fein", "fin", "fino", "finesse", "fineness", "pure", "purity");

  private static final Map<String, List<String>> DENIALS =
      Map.of(
          "not-silver",
          List.of("Ag", "Au"),
          "not-silver-said",
          List.of("Ag"),
          "not-gold-said",
          List.of("Au"),
          "base-said",
          List.of("Ag", "Au"));

  private static final Set<String> PRECIOUS = Set.of("Ag", "Au", "Pt", "Pd");

  private final List<Clue<String>> said = new ArrayList<>();
  private final List<Clue<String>> denied = new ArrayList<>();
  private Optional<Clue<Fineness>> fineness = Optional.empty();

  private MetalReader() {}

  static MetalWords read(List<Passage> passages) {
    MetalReader reader = new MetalReader();
    for (Passage passage : passages) {
      if (passage.role() == FieldRole.FINENESS) {
        reader.finenessColumn(passage);
      } else if (passage.role() == FieldRole.METAL || passage.role().isText()) {
        reader.metals(passage);
      }
    }
    for (Passage passage : passages) {
      if (passage.role() == FieldRole.METAL || passage.role().isText()) {
        reader.figures(passage);
      }
    }
    return new MetalWords(reader.said, reader.denied, reader.fineness);
  }

  private void metals(Passage passage) {
    passage.hits().forEach(hit -> disowned(passage, hit));
    for (Hit hit : passage.metalHits()) {
      hit.meaning(Meaning.FinenessName.class)
          .ifPresent(
              name ->
                  fineness(
                      new Fineness(name.perMille()),
                      passage.raw(hit.at(), hit.end()),
                      passage.role()));
      Optional<Meaning.MetalName> metal = hit.meaning(Meaning.MetalName.class);
      if (metal.isPresent() && counts(passage, hit, metal.get())) {
        Clue<String> clue =
            new Clue<>(metal.get().metal(), passage.raw(hit.at(), hit.end()), passage.role());
        boolean negated = isDenied(passage, hit);
        boolean doubted = passage.isSign(hit.end(), "?");
        boolean partner = isPartner(passage, clue.value());
        if (!doubted && !partner) {
          (negated ? denied : said).add(clue);
        }
        passage.take(hit.at(), hit.end());
      }
    }
  }

  /** In a column "90 % silver, 10 % copper" the copper is only the rest of the alloy. */
  private static boolean isPartner(Passage passage, String metal) {
    boolean precious = PRECIOUS.contains(metal);
    return !precious
        && passage.role() == FieldRole.METAL
        && passage.metalHits().stream()
            .flatMap(hit -> hit.all(Meaning.MetalName.class).stream())
            .anyMatch(name -> PRECIOUS.contains(name.metal()));
  }

  /** "not gold", and "not silver or gold". */
  private static boolean isDenied(Passage passage, Hit hit) {
    boolean goesOn = passage.matches(hit.at() - 1, "or|nor|oder|ou|noch|of|ni");
    return passage.isNegated(hit.at())
        || (goesOn && passage.isMetal(hit.at() - 2) && passage.isNegated(hit.at() - 2));
  }

  /** "base metal" and "German silver" deny silver, "not gold" gold. */
  private void disowned(Passage passage, Hit hit) {
    boolean negated = passage.isNegated(hit.at());
    boolean doubted = passage.isSign(hit.end(), "?");
    for (Map.Entry<String, List<String>> denial : DENIALS.entrySet()) {
      if (hit.isMark(denial.getKey()) && !negated && !doubted) {
        String words = passage.raw(hit.at(), hit.end());
        denial.getValue().forEach(metal -> denied.add(new Clue<>(metal, words, passage.role())));
      }
    }
  }

  /**
   * A word that names a coin too ("nickel") is a metal only if it was not taken as the coin; a
   * risky one needs a place.
   */
  private static boolean counts(Passage passage, Hit hit, Meaning.MetalName metal) {
    if (passage.role() == FieldRole.METAL) {
      return true;
    }
    boolean free = !isTheCoin(passage, hit);
    return metal.risky() ? free && hasPlace(passage, hit) && !isInTypeName(passage, hit) : free;
  }

  /** "nickel" alone, and in "war nickel" and "jefferson nickel", is the coin. */
  private static boolean isTheCoin(Passage passage, Hit hit) {
    boolean coinToo =
        passage
            .hit(hit.at())
            .filter(other -> other.end() == hit.end() && other.has(Meaning.Coin.class))
            .isPresent();
    return coinToo && !passage.isFree(hit.at(), hit.end());
  }

  /** In "jefferson nickel" the nickel is the coin. */
  private static boolean isInTypeName(Passage passage, Hit hit) {
    return passage
        .hitBefore(hit.end())
        .filter(outer -> outer.length() > hit.length() && outer.has(Meaning.Type.class))
        .isPresent();
  }

  /** Abbreviations and "or" count just behind the coin, a bar or a figure, and not in capitals. */
  private static boolean hasPlace(Passage passage, Hit hit) {
    if (passage.word(hit.at()).is("or") && goesOnInWords(passage, hit.end())) {
      // English: "paint or beads".
      return false;
    }
    boolean small = !passage.word(hit.at()).isCapitals() || passage.size() == 1;
    int before = passage.matches(hit.at() - 1, "de|d|en|di|in|aus|van") ? hit.at() - 1 : hit.at();
    boolean afterThing =
        passage
            .hitBefore(before)
            .filter(
                other ->
                    other.namesCoin()
                        || other.has(Meaning.Unit.class)
                        || other.isMark("bar")
                        || other.isMark("medal")
                        || other.isMark("round"))
            .isPresent();
    boolean afterTaken =
        hit.at() > 0 && passage.isTaken(hit.at() - 1) && passage.role() != FieldRole.NOTES;
    boolean afterFigure = passage.matches(hit.at() - 1, "\\d{3,4}|0?[.,]\\d{2,4}");
    return small && (afterThing || afterTaken || afterFigure);
  }

  private static boolean goesOnInWords(Passage passage, int at) {
    return passage.at(at).filter(Word::isLetters).isPresent();
  }

  private void finenessColumn(Passage passage) {
    String text = passage.text().strip();
    boolean percent = text.endsWith("%");
    Optional<BigDecimal> number =
        NumberText.read(
            text.replaceAll("(?i)(%|‰|/1000|fine|fein|ag|au|pt|k|kt|ct)\\s*$", "").strip());
    number
        .flatMap(value -> ofNumber(value, percent))
        .ifPresent(value -> fineness(value, text, passage.role()));
    if (number.isEmpty()) {
      metals(passage);
    }
    passage.take(0, passage.size());
  }

  /** 0.9, 90 %, 900: all the same fineness. */
  static Optional<Fineness> ofNumber(BigDecimal value, boolean percent) {
    BigDecimal perMille;
    if (percent) {
      perMille = value.movePointRight(1);
    } else if (value.compareTo(ONE) <= 0) {
      perMille = value.movePointRight(3);
    } else if (value.compareTo(HUNDRED) < 0) {
      perMille = value.movePointRight(1);
    } else if (value.compareTo(THOUSAND) > 0) {
      perMille = value.movePointLeft(1);
    } else {
      perMille = value;
    }
    boolean possible = perMille.signum() > 0 && perMille.compareTo(THOUSAND) <= 0;
    return possible ? Optional.of(new Fineness(perMille)) : Optional.empty();
  }

  /** .999, 40 %, 800 silver, 999 fine. */
  private void figures(Passage passage) {
    for (int i = 0; i < passage.size(); i++) {
      Word word = passage.word(i);
      if (!word.isNumber() || passage.isTaken(i)) {
        continue;
      }
      Optional<BigDecimal> value = NumberText.read(word.text());
      boolean percent = passage.isSign(i + 1, "%");
      boolean decimal = DECIMAL.matcher(word.text()).matches();
      boolean perMille = PER_MILLE.matcher(word.text()).matches() && besideMetal(passage, i);
      if (value.isPresent() && (percent || decimal || perMille)) {
        int at = i;
        ofNumber(value.get(), percent)
            .ifPresent(
                found -> {
                  fineness(found, passage.raw(at, at + (percent ? 2 : 1)), passage.role());
                  passage.take(at, at + (percent ? 2 : 1));
                });
      }
    }
  }

  private static boolean besideMetal(Passage passage, int at) {
    boolean after =
        passage.isMetal(at + 1)
            || passage
                .at(at + 1)
                .filter(word -> FINE_WORDS.contains(word.text()) || word.is("/"))
                .isPresent();
    boolean before =
        passage.metalHits().stream()
            .anyMatch(hit -> hit.end() == at && hit.meaning(Meaning.MetalName.class).isPresent());
    boolean alone =
        passage.size() == 1 && HIGH_PER_MILLE.matcher(passage.word(at).text()).matches();
    return after || before || alone;
  }

  private void fineness(Fineness value, String words, FieldRole role) {
    if (fineness.isEmpty()) {
      fineness = Optional.of(new Clue<>(value, words, role));
    }
  }
}
