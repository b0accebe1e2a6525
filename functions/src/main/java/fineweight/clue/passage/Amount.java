package fineweight.clue.passage;

import fineweight.clue.word.NumberText;
import fineweight.clue.word.Word;
import fineweight.quantity.Decimals;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A number with the words it spans: 20, 2.5, 2,50, 1/2, 2 1/2, half, five. Immutable.
 *
 * @param start the first word
 * @param end the place after the last
 */
public record Amount(BigDecimal value, int start, int end) {
  private static final Pattern UP_TO_THREE_DIGITS = Pattern.compile("\\d{1,3}");

  /** The number just before a place; empty if there is none or it is taken. */
  public static Optional<Amount> before(Passage passage, int at) {
    int last = passage.isSign(at - 1, "-") || passage.isSign(at - 1, ".") ? at - 2 : at - 1;
    if (last < 0 || passage.isTaken(last)) {
      return Optional.empty();
    }
    Word word = passage.word(last);
    if (word.isLetters()) {
      return passage.numberWord(last).map(value -> new Amount(value, last, last + 1));
    }
    if (!word.isNumber()) {
      return Optional.empty();
    }
    boolean fraction = passage.isSign(last - 1, "/") && isPlain(passage, last - 2);
    if (!fraction) {
      return NumberText.read(word.text()).map(value -> new Amount(value, last, last + 1));
    }
    Optional<BigDecimal> part = quotient(passage.word(last - 2), word);
    boolean whole = isPlain(passage, last - 3) && passage.word(last - 3).text().length() <= 3;
    return part.map(
        value ->
            whole
                ? new Amount(
                    value.add(new BigDecimal(passage.word(last - 3).text())), last - 3, last + 1)
                : new Amount(value, last - 2, last + 1));
  }

  /** The number that begins at a place, in figures. */
  public static Optional<Amount> after(Passage passage, int at) {
    Optional<BigDecimal> first =
        passage.at(at).filter(Word::isNumber).flatMap(word -> NumberText.read(word.text()));
    if (first.isEmpty() || passage.isTaken(at)) {
      return Optional.empty();
    }
    if (isPlain(passage, at + 1) && passage.isSign(at + 2, "/") && isPlain(passage, at + 3)) {
      return quotient(passage.word(at + 1), passage.word(at + 3))
          .map(part -> new Amount(first.get().add(part), at, at + 4));
    }
    if (passage.isSign(at + 1, "/") && isPlain(passage, at) && isPlain(passage, at + 2)) {
      return quotient(passage.word(at), passage.word(at + 2))
          .map(part -> new Amount(part, at, at + 3));
    }
    return Optional.of(new Amount(first.get(), at, at + 1));
  }

  private static boolean isPlain(Passage passage, int at) {
    return at >= 0 && !passage.isTaken(at) && passage.matches(at, "\\d{1,4}");
  }

  private static Optional<BigDecimal> quotient(Word above, Word below) {
    if (!UP_TO_THREE_DIGITS.matcher(below.text()).matches()
        || new BigDecimal(below.text()).signum() == 0) {
      return Optional.empty();
    }
    return Optional.of(
        new BigDecimal(above.text()).divide(new BigDecimal(below.text()), Decimals.DIVISION));
  }

  /** Whether it stands in letters, such as half. */
  public boolean isInLetters(Passage passage) {
    return passage.word(start).isLetters();
  }

  public boolean isWhole() {
    return value.stripTrailingZeros().scale() <= 0;
  }
}
