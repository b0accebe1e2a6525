package fineweight.clue.reading;

import fineweight.clue.Clue;
import fineweight.clue.FieldRole;
import fineweight.clue.Issuers;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.passage.Hit;
import fineweight.clue.passage.Passage;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the country. */
final class PlaceReader {
  private static final String HINT = "hint";

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
    return hint(passages);
  }

  /** Where no country is named, its ruler or mint may be. */
  private static Optional<Clue<Issuers>> hint(List<Passage> passages) {
    for (Passage passage : passages) {
      for (Hit hit : passage.hits()) {
        for (Meaning.Country country : hit.all(Meaning.Country.class)) {
          if (country.kind().equals(HINT)) {
            return Optional.of(
                new Clue<>(
                    new Issuers(country.issuers(), HINT),
                    passage.raw(hit.at(), hit.end()),
                    passage.role()));
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
    for (Hit hit : passage.hits()) {
      List<Meaning.Country> countries =
          hit.all(Meaning.Country.class).stream()
              .filter(country -> column || !country.columnOnly())
              .filter(country -> !country.kind().equals(HINT))
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
        new Clue<>(new Issuers(List.copyOf(keys), kind), String.join(", ", words), passage.role()));
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
}
