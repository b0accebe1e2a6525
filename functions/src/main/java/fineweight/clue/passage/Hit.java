package fineweight.clue.passage;

import fineweight.clue.lexicon.Meaning;
import java.util.List;
import java.util.Optional;

/**
 * A phrase of the word lists in a text. Immutable.
 *
 * @param at the first word, from 0
 * @param length how many words
 */
public record Hit(int at, int length, List<Meaning> meanings) {
  /** The place after its last word. */
  public int end() {
    return at + length;
  }

  /** The first meaning of a kind. */
  public <M extends Meaning> Optional<M> meaning(Class<M> kind) {
    for (Meaning meaning : meanings) {
      if (kind.isInstance(meaning)) {
        return Optional.of(kind.cast(meaning));
      }
    }
    return Optional.empty();
  }

  /** All meanings of a kind. */
  public <M extends Meaning> List<M> all(Class<M> kind) {
    return meanings.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  public boolean has(Class<? extends Meaning> kind) {
    return meaning(kind).isPresent();
  }

  /** Whether it is a remark of that kind. */
  public boolean isMark(String kind) {
    return all(Meaning.Mark.class).stream().anyMatch(mark -> mark.kind().equals(kind));
  }

  /** Whether it names a coin or a type of coin. */
  public boolean namesCoin() {
    return has(Meaning.Coin.class) || has(Meaning.Type.class);
  }
}
