package fineweight.clue.reading.date;

import fineweight.clue.Dating;
import fineweight.clue.Dating.Kind;
import fineweight.clue.passage.Passage;
import fineweight.clue.word.Word;
import java.util.List;
import java.util.regex.Pattern;

/** Reads decades and centuries in a description: 196x, 1960s, 16xx, 19??. */
final class OpenYears {
  private static final Pattern CENTURY = Pattern.compile("1[4-9]|20");
  private static final Pattern TWO_OPEN = Pattern.compile("xx|\\?\\?|\\*\\*");
  private static final Pattern DECADE = Pattern.compile("1[4-9]\\d|20\\d");
  private static final Pattern ONE_OPEN = Pattern.compile("[x?*]");
  private static final Pattern ROUND_YEAR = Pattern.compile("1[4-9]\\d0|20\\d0");

  private OpenYears() {}

  static Dating read(Passage passage) {
    for (int i = 0; i + 1 < passage.size(); i++) {
      Word digits = passage.word(i);
      if (!digits.isNumber() || passage.isTaken(i)) {
        continue;
      }
      int after = tail(passage, i);
      int years = yearsOpen(digits.text(), passage, i, after);
      if (years > 0) {
        int first = Integer.parseInt(digits.text()) * (digits.text().length() == 4 ? 1 : years);
        passage.take(i, after);
        return new Dating(Kind.SPAN, List.of(first, first + years - 1), passage.raw(i, after));
      }
    }
    return Dating.UNSAID;
  }

  /** The place after the letters or question marks that touch the number. */
  private static int tail(Passage passage, int at) {
    int end = at + 1;
    while (end < passage.size()
        && passage.word(end).touches(passage.word(end - 1))
        && passage.matches(end, "x{1,2}|s|\\?|\\*")) {
      end++;
    }
    return end;
  }

  private static int yearsOpen(String digits, Passage passage, int at, int end) {
    if (end == at + 1) {
      return 0;
    }
    String tail = passage.raw(at + 1, end).toLowerCase(java.util.Locale.ROOT);
    if (CENTURY.matcher(digits).matches() && TWO_OPEN.matcher(tail).matches()) {
      return 100;
    }
    if (DECADE.matcher(digits).matches() && ONE_OPEN.matcher(tail).matches()) {
      return 10;
    }
    return ROUND_YEAR.matcher(digits).matches() && tail.equals("s")
        ? digits.endsWith("00") ? 100 : 10
        : 0;
  }
}
