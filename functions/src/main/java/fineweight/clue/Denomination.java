package fineweight.clue;

import fineweight.clue.lexicon.Face;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A denomination as said, with everything it may mean. Immutable.
 *
 * @param faces the possible meanings, at least one
 * @param countries catalogue keys to which the name belongs; empty for any
 * @param orCounted another reading, for where no coin has such a face
 */
public record Denomination(List<Face> faces, Set<String> countries, Optional<Counted> orCounted) {
  /**
   * A number of coins of one unit: "3 gulden" are three coins of one gulden, for want of a coin of
   * three.
   *
   * @param faces the possible meanings of one coin
   */
  public record Counted(long pieces, List<Face> faces) {
    public Counted {
      faces = List.copyOf(faces);
    }
  }

  public Denomination {
    faces = List.copyOf(faces);
    // In the order of the list: where coins of several countries are alike, the first is named.
    countries = Collections.unmodifiableSet(new LinkedHashSet<>(countries));
  }
}
