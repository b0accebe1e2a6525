package fineweight.clue;

import fineweight.clue.lexicon.Face;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * An everyday name of a type. Immutable.
 *
 * @param phrases one of them occurs in the type name or variant of the standards meant, in
 *     comparable form
 * @param countries catalogue keys; empty for any
 * @param implied the denomination, if the type alone names the coin; may be empty
 */
public record TypeName(List<String> phrases, Set<String> countries, List<Face> implied) {
  public TypeName {
    phrases = List.copyOf(phrases);
    // In the order of the list: where coins of several countries are alike, the first is named.
    countries = Collections.unmodifiableSet(new LinkedHashSet<>(countries));
    implied = List.copyOf(implied);
  }
}
