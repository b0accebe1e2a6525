package fineweight.clue.reading.date;

import fineweight.clue.Dating;
import fineweight.clue.Dating.Kind;
import fineweight.clue.passage.Passage;
import fineweight.clue.word.Word;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads a column of years: also forms that a description may not hold. */
final class YearColumn {
  private static final Pattern DIGITS = Pattern.compile("\\d+");
  private static final Pattern NEGATIVE = Pattern.compile("-\\d+");

  private static final Pattern NONE =
      Pattern.compile(
          "n\\.?d\\.?|undated|none|no date|dateless|[-–—/]+|blank|worn|illegible|o\\.?j\\.?|z\\.?j\\.?|s\\.?d\\.?");
  private static final Pattern BEFORE_CHRIST =
      Pattern.compile(
          ".*\\b(b\\.?\\s?c\\.?(\\s?e\\.?)?|v\\.?\\s?chr\\.?|av\\.?\\s?j\\.?-?c\\.?)(\\W.*|$)");
  private static final Pattern ANNO_DOMINI =
      Pattern.compile("(ca\\.?|c\\.?|circa)?\\s*(a\\.?d\\.?|n\\.?\\s?chr\\.?)\\s*\\d{1,3}(\\D.*)?");
  private static final Pattern EARLY =
      Pattern.compile("\\d{1,3}\\s*s|\\d{1,3}\\s*[-–]\\s*\\d{1,3}\\s*(a\\.?d\\.?)?");
  private static final Pattern TWO_SHORT = Pattern.compile("\\d{2}\\s*[-–]\\s*\\d{2}");
  private static final Pattern CENTURY = Pattern.compile("\\D{0,8}\\d{2}([x?_*-]){2}\\D{0,3}");
  private static final Pattern DECADE = Pattern.compile("\\D{0,8}\\d{3}([x?_*]|0s|-$).{0,3}");
  private static final Pattern DOUBTED =
      Pattern.compile(
          "(ca\\.?|c\\.?|circa|um|about|~|prob\\.?|maybe)\\s*\\d{4}.*|\\(?\\d{4}\\)?\\s*\\?+.*");
  private static final int LAST_PLAIN_YEAR = 2100;

  /** Longer texts in such a column are no date. */
  private static final int LONGEST = 60;

  private YearColumn() {}

  static Dating read(Passage passage) {
    String text = passage.text().strip();
    Optional<Dating> special =
        text.length() > LONGEST ? Optional.empty() : special(text, text.toLowerCase(Locale.ROOT));
    if (special.isPresent()) {
      passage.take(0, passage.size());
      return special.get();
    }
    Dating dating = DatingReader.inText(passage, true);
    if (dating.kind() != Kind.UNSAID) {
      return dating;
    }
    passage.take(0, passage.size());
    return alone(passage, text);
  }

  /** A bare number that a description may not hold. */
  private static Dating alone(Passage passage, String text) {
    if (text.length() <= LONGEST && NONE.matcher(text.toLowerCase(Locale.ROOT)).matches()) {
      return Dating.UNSAID;
    }
    List<String> numbers =
        passage.words().stream().filter(Word::isNumber).map(Word::text).limit(2).toList();
    if (numbers.size() == 1 && DIGITS.matcher(numbers.get(0)).matches()) {
      return ofDigits(numbers.get(0), text);
    }
    return new Dating(Kind.UNREADABLE, List.of(), text);
  }

  private static Dating ofDigits(String digits, String text) {
    return switch (digits.length()) {
      case 2 -> new Dating(Kind.SHORT_YEARS, List.of(Integer.parseInt(digits)), text);
      case 3 -> new Dating(Kind.ANCIENT, List.of(Integer.parseInt(digits)), text);
      case 4 ->
          Integer.parseInt(digits) > LAST_PLAIN_YEAR
              ? new Dating(Kind.IMPOSSIBLE, List.of(), text)
              : new Dating(Kind.UNREADABLE, List.of(), text);
      case 1 -> new Dating(Kind.UNREADABLE, List.of(), text);
      default -> new Dating(Kind.IMPOSSIBLE, List.of(), text);
    };
  }

  /** Forms that single words do not show: 16xx, 260s, 1964?, 440 BC, AD 103-111. */
  private static Optional<Dating> special(String text, String plain) {
    boolean ancient =
        BEFORE_CHRIST.matcher(plain).matches()
            || ANNO_DOMINI.matcher(plain).matches()
            || (EARLY.matcher(plain).matches() && !TWO_SHORT.matcher(plain).matches());
    if (ancient) {
      return Optional.of(new Dating(Kind.ANCIENT, List.of(), text));
    }
    if (NEGATIVE.matcher(plain).matches()) {
      return Optional.of(new Dating(Kind.IMPOSSIBLE, List.of(), text));
    }
    if (CENTURY.matcher(plain).matches()) {
      return Optional.of(span(digits(plain) * 100, 100, text));
    }
    if (DECADE.matcher(plain).matches()) {
      return Optional.of(
          span(Integer.parseInt(plain.replaceAll("\\D", "").substring(0, 3)) * 10, 10, text));
    }
    if (DOUBTED.matcher(plain).matches()) {
      int year = Integer.parseInt(plain.replaceAll("\\D", "").substring(0, 4));
      return Optional.of(span(year - year % 10, 10, text));
    }
    return Optional.empty();
  }

  private static int digits(String plain) {
    return Integer.parseInt(plain.replaceAll("\\D", ""));
  }

  private static Dating span(int first, int years, String text) {
    return new Dating(Kind.SPAN, List.of(first, first + years - 1), text);
  }
}
