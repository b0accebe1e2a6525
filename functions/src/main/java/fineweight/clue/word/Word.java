package fineweight.clue.word;

/**
 * One word, number or sign of a text. Immutable.
 *
 * @param text the comparable form: lower case, without accents
 * @param raw as it stands in the text
 * @param start the place of its first character in the text, from 0
 * @param end the place after its last character
 */
public record Word(String text, String raw, int start, int end, Kind kind) {
  /** What a word is made of. */
  public enum Kind {
    LETTERS,
    NUMBER,
    SIGN
  }

  public boolean isNumber() {
    return kind == Kind.NUMBER;
  }

  public boolean isLetters() {
    return kind == Kind.LETTERS;
  }

  public boolean is(String wanted) {
    return text.equals(wanted);
  }

  /** Whether this word begins where the other ends, without a blank between. */
  public boolean touches(Word before) {
    return before.end == start;
  }

  /** Whether the word stands in capitals, such as a mint letter does. */
  public boolean isCapitals() {
    return isLetters() && raw.equals(raw.toUpperCase(java.util.Locale.ROOT));
  }
}
