package fineweight.clue;

import fineweight.quantity.Fineness;
import java.util.List;
import java.util.Optional;

/**
 * What is said of the metal. Immutable.
 *
 * @param said IUPAC symbols and names of alloys
 * @param denied the same, after "not" or "no"
 * @param fineness parts per thousand, if a figure or a name such as sterling stands there
 */
public record MetalWords(
    List<Clue<String>> said, List<Clue<String>> denied, Optional<Clue<Fineness>> fineness) {
  public MetalWords {
    said = List.copyOf(said);
    denied = List.copyOf(denied);
  }
}
