package fineweight.clue.lexicon;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the known word from which a long one is a single slip away: a letter left out, put in,
 * changed, or two neighbours swapped. Short words are never touched. Immutable.
 */
public final class Slips {
  /** Words shorter than this are too near to too many others. */
  private static final int LONG = 6;

  private static final int LONGEST = 24;

  private final Set<String> known;

  /** Known long words by each form that lacks one of their letters, and by themselves. */
  private final Map<String, Set<String>> byForm = new HashMap<>();

  /**
   * @param known words that are right as they stand
   * @param wanted words that a slip may have been made in
   */
  Slips(Set<String> known, Set<String> wanted) {
    this.known = Set.copyOf(known);
    for (String word : wanted) {
      if (isLong(word)) {
        byForm.computeIfAbsent(word, form -> new HashSet<>()).add(word);
        for (int i = 0; i < word.length(); i++) {
          byForm.computeIfAbsent(without(word, i), form -> new HashSet<>()).add(word);
        }
      }
    }
  }

  private static boolean isLong(String word) {
    return word.length() >= LONG
        && word.length() <= LONGEST
        && word.chars().allMatch(Character::isLetter);
  }

  private static String without(String word, int at) {
    return word.substring(0, at) + word.substring(at + 1);
  }

  /**
   * The one known word that is a single slip away; empty if the word is known, is short, or several
   * known words are as near.
   *
   * @param word in comparable form
   */
  public Optional<String> mend(String word) {
    if (!isLong(word) || known.contains(word)) {
      return Optional.empty();
    }
    Set<String> near = new HashSet<>(byForm.getOrDefault(word, Set.of()));
    for (int i = 0; i < word.length(); i++) {
      near.addAll(byForm.getOrDefault(without(word, i), Set.of()));
    }
    near.removeIf(candidate -> !isOneSlip(word, candidate));
    return near.size() == 1 ? Optional.of(near.iterator().next()) : Optional.empty();
  }

  private static boolean isOneSlip(String word, String other) {
    int shorter = Math.min(word.length(), other.length());
    int front = 0;
    while (front < shorter && word.charAt(front) == other.charAt(front)) {
      front++;
    }
    int back = 0;
    while (back < shorter - front
        && word.charAt(word.length() - 1 - back) == other.charAt(other.length() - 1 - back)) {
      back++;
    }
    String middle = word.substring(front, word.length() - back);
    String otherMiddle = other.substring(front, other.length() - back);
    boolean swapped =
        middle.length() == 2
            && otherMiddle.length() == 2
            && middle.charAt(0) == otherMiddle.charAt(1)
            && middle.charAt(1) == otherMiddle.charAt(0);
    return swapped || (middle.length() <= 1 && otherMiddle.length() <= 1);
  }
}
