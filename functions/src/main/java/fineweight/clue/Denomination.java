package fineweight.clue;

import fineweight.clue.lexicon.Face;
import java.util.List;
import java.util.Set;

/**
 * A denomination as said, with everything it may mean. Immutable.
 *
 * @param faces the possible meanings, at least one
 * @param countries catalogue keys to which the name belongs; empty for any
 */
public record Denomination(List<Face> faces, Set<String> countries) {
  public Denomination {
    faces = List.copyOf(faces);
    countries = Set.copyOf(countries);
  }
}
