package fineweight.clue;

import java.util.List;
import java.util.Optional;

/**
 * State and remarks. Immutable.
 *
 * @param grade on the scale of 1 to 70, if one is said
 * @param certificate the number on an independent certifier's holder, if one is given
 * @param marks remarks by kind, such as {@code proof}, {@code mounted}, {@code copy}
 */
public record Condition(
    Optional<Clue<Integer>> grade, Optional<Clue<String>> certificate, List<Clue<String>> marks) {
  public Condition {
    marks = List.copyOf(marks);
  }

  /** The first remark of a kind. */
  public Optional<Clue<String>> mark(String kind) {
    return marks.stream().filter(mark -> mark.value().equals(kind)).findFirst();
  }
}
