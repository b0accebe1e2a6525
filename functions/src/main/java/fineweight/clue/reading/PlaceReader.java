package fineweight.clue.reading;

import fineweight.clue.Clue;
import fineweight.clue.FieldRole;
import fineweight.clue.Issuers;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.word.Word;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Reads the country and the mint mark. */
final class PlaceReader {
  private PlaceReader() {}

  static Optional<Clue<Issuers>> country(List<Passage> passages) {
    for (Passage passage : passages) {
      if (passage.role() == FieldRole.COUNTRY) {
        Optional<Clue<Issuers>> said = countryIn(passage, true);
        passage.take(0, passage.size());
        return said.isPresent()
            ? said
            : Optional.of(
                new Clue<>(new Issuers(List.of(), "unknown"), passage.text(), FieldRole.COUNTRY));
      }
    }
    for (FieldRole role :
        List.of(
            FieldRole.DENOMINATION,
            FieldRole.TYPE,
            FieldRole.DESCRIPTION,
            FieldRole.VARIETY,
            FieldRole.NOTES)) {
      for (Passage passage : passages) {
        if (passage.role() == role) {
          Optional<Clue<Issuers>> said = countryIn(passage, false);
          if (said.isPresent()) {
            return said;
          }
        }
      }
    }
    return Optional.empty();
  }

  /** Several names narrow each other ("Germany, Prussia") where they can. */
  private static Optional<Clue<Issuers>> countryIn(Passage passage, boolean column) {
    Set<String> keys = null;
    String kind = "";
    List<String> words = new ArrayList<>();
    for (Passage.Hit hit : passage.hits()) {
      List<Meaning.Country> countries =
          hit.all(Meaning.Country.class).stream()
              .filter(country -> column || !country.columnOnly())
              .toList();
      if (countries.isEmpty()) {
        continue;
      }
      Set<String> here = new LinkedHashSet<>();
      for (Meaning.Country country : countries) {
        here.addAll(country.issuers());
        kind = kind.isEmpty() ? country.kind() : kind;
      }
      words.add(passage.raw(hit.at(), hit.end()));
      passage.take(hit.at(), hit.end());
      keys = narrowed(keys, here);
    }
    if (keys == null) {
      return Optional.empty();
    }
    return Optional.of(
        new Clue<>(
            new Issuers(List.copyOf(keys), keys.isEmpty() ? kind : ""),
            String.join(", ", words),
            passage.role()));
  }

  private static Set<String> narrowed(Set<String> before, Set<String> here) {
    if (before == null) {
      return here;
    }
    Set<String> both = new LinkedHashSet<>(before);
    both.retainAll(here);
    if (!both.isEmpty() || here.isEmpty()) {
      return both.isEmpty() ? before : both;
    }
    before.addAll(here);
    return before;
  }

  static Optional<Clue<String>> mint(List<Passage> passages) {
    for (Passage passage : passages) {
      if (passage.role() == FieldRole.MINT) {
        return mintColumn(passage);
      }
    }
    for (Passage passage : passages) {
      if (passage.role() == FieldRole.YEAR || passage.role().isText()) {
        Optional<Clue<String>> letter = mintInText(passage);
        if (letter.isPresent()) {
          return letter;
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Clue<String>> mintColumn(Passage passage) {
    passage.take(0, passage.size());
    String text = passage.text().strip();
    Optional<Clue<String>> named = mintName(passage);
    if (named.isPresent()) {
      return named;
    }
    if (text.matches("[-–—]+|0")) {
      return Optional.of(new Clue<>("", text, FieldRole.MINT));
    }
    boolean letters = text.matches("\\p{L}{1,3}[*.°+]?");
    return letters
        ? Optional.of(
            new Clue<>(
                text.toUpperCase(Locale.ROOT).replaceAll("[*.°+]", ""), text, FieldRole.MINT))
        : Optional.empty();
  }

  private static Optional<Clue<String>> mintName(Passage passage) {
    for (Passage.Hit hit : passage.hits()) {
      Optional<Meaning.MintName> name = hit.meaning(Meaning.MintName.class);
      if (name.isPresent()) {
        passage.take(hit.at(), hit.end());
        return Optional.of(
            new Clue<>(name.get().letters(), passage.raw(hit.at(), hit.end()), passage.role()));
      }
    }
    return Optional.empty();
  }

  /**
   * A letter behind the date ("1964-D", "43P", "1921 S"), "S mint", or a capital that opens a
   * remark ("S, proof").
   */
  private static Optional<Clue<String>> mintInText(Passage passage) {
    for (int i = 0; i < passage.size(); i++) {
      if (!passage.word(i).text().matches("p|d|s|o|cc|w|c|a|f|g|j|h|kn|b")) {
        continue;
      }
      boolean usual = passage.word(i).text().matches("p|d|s|o|cc|w");
      boolean afterDate = isAfterDate(passage, i) && (usual || passage.word(i).isCapitals());
      boolean capital = passage.word(i).isCapitals() && !passage.isTaken(i);
      boolean spelled =
          passage.at(i + 1).filter(word -> word.text().matches("mint|mintmark|mm")).isPresent();
      boolean opens =
          capital
              && i == 0
              && (passage.size() == 1 || passage.isSign(1, ",") || passage.isSign(1, "-"));
      if (!passage.isTaken(i) && (afterDate || spelled || opens)) {
        passage.take(i, i + 1);
        return Optional.of(
            new Clue<>(
                passage.word(i).text().toUpperCase(Locale.ROOT),
                passage.word(i).raw(),
                passage.role()));
      }
    }
    return mintName(passage);
  }

  private static boolean isAfterDate(Passage passage, int at) {
    int before = passage.isSign(at - 1, "-") ? at - 2 : at - 1;
    Optional<Word> number = passage.at(before).filter(Word::isNumber);
    boolean date =
        number.isPresent()
            && passage.isTaken(before)
            && number.get().text().matches("\\d{2}|\\d{4}");
    boolean touching = date && at - 1 >= 0 && passage.word(at).touches(passage.word(at - 1));
    return date && (touching || passage.word(at).isCapitals());
  }
}
