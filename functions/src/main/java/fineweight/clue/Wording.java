package fineweight.clue;

import fineweight.clue.word.Word;
import java.util.List;
import java.util.Set;

/**
 * The words of a row in comparable form. Immutable.
 *
 * @param passages the words of each field, without signs that mean nothing
 * @param leftOver words of the fields that no rule took, as written
 * @param slips words read as others
 */
public record Wording(List<List<Word>> passages, List<String> leftOver, List<Slip> slips) {
  /**
   * A word that was read as another.
   *
   * @param written as it stands in the text
   * @param read the known word
   */
  public record Slip(String written, String read) {}

  private static final Set<String> NEGATIONS =
      Set.of(
          "no", "not", "without", "w/o", "wo", "kein", "keine", "ohne", "nicht", "geen", "niet",
          "zonder", "pas", "sans", "senza", "non", "sin", "none", "lacks", "ikke", "inte", "utan",
          "uden", "minus");

  public Wording {
    passages = passages.stream().map(List::copyOf).toList();
    leftOver = List.copyOf(leftOver);
    slips = List.copyOf(slips);
  }

  /** Whether the phrase is said, not denied ("no arrows") and not doubted ("arrows?"). */
  public boolean says(String phrase) {
    return find(phrase, false);
  }

  /** Whether the phrase is denied: "no arrows", "without arrows". */
  public boolean denies(String phrase) {
    return find(phrase, true);
  }

  private boolean find(String phrase, boolean denied) {
    String[] wanted = phrase.split(" ");
    for (List<Word> words : passages) {
      for (int i = 0; i + wanted.length <= words.size(); i++) {
        if (standsAt(words, i, wanted)
            && !isDoubted(words, i + wanted.length)
            && isNegation(words, i - 1) == denied) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean standsAt(List<Word> words, int at, String[] wanted) {
    for (int i = 0; i < wanted.length; i++) {
      if (!words.get(at + i).is(wanted[i])) {
        return false;
      }
    }
    return true;
  }

  private static boolean isDoubted(List<Word> words, int after) {
    return after < words.size() && words.get(after).is("?");
  }

  private static boolean isNegation(List<Word> words, int at) {
    return at >= 0 && isNegation(words.get(at));
  }

  /** Whether a word turns what follows into its opposite. */
  public static boolean isNegation(Word word) {
    return NEGATIONS.contains(word.text());
  }
}
