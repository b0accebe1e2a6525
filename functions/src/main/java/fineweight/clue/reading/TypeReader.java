package fineweight.clue.reading;

import fineweight.clue.Clue;
import fineweight.clue.TypeName;
import fineweight.clue.lexicon.Face;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.passage.Hit;
import fineweight.clue.passage.Passage;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Reads everyday names of types. */
final class TypeReader {
  private TypeReader() {}

  static List<Clue<TypeName>> read(List<Passage> passages) {
    List<Clue<TypeName>> types = new ArrayList<>();
    for (Passage passage : passages) {
      if (passage.role().isText()) {
        passage.hits().forEach(hit -> add(passage, hit, types));
      }
    }
    return types;
  }

  private static void add(Passage passage, Hit hit, List<Clue<TypeName>> types) {
    List<Meaning.Type> meanings = hit.all(Meaning.Type.class);
    boolean negated = passage.isNegated(hit.at());
    boolean doubted = passage.isSign(hit.end(), "?") && hit.length() > 1;
    if (!meanings.isEmpty() && !negated && !doubted) {
      types.add(new Clue<>(merged(meanings), passage.raw(hit.at(), hit.end()), passage.role()));
      passage.take(hit.at(), hit.end());
    }
  }

  /** A name that several series share means any of them. */
  private static TypeName merged(List<Meaning.Type> meanings) {
    Set<String> phrases = new LinkedHashSet<>();
    Set<String> countries = new LinkedHashSet<>();
    Set<Face> implied = new LinkedHashSet<>();
    boolean anywhere = false;
    boolean nothingImplied = false;
    for (Meaning.Type meaning : meanings) {
      phrases.addAll(meaning.typePhrases());
      countries.addAll(meaning.countries());
      implied.addAll(meaning.implied());
      anywhere |= meaning.countries().isEmpty();
      nothingImplied |= meaning.implied().isEmpty();
    }
    return new TypeName(
        List.copyOf(phrases),
        anywhere ? Set.of() : countries,
        nothingImplied ? List.of() : List.copyOf(implied));
  }
}
