package fineweight.workbook.xlsx.formula;

import java.util.ArrayList;
import java.util.List;

/**
 * A formula as it is filled down a column: the same text but for its relative row numbers, which
 * keep their distance from the row. Where that is not plain nothing is the same, which costs time
 * and nothing else. Immutable.
 */
final class FilledDown {
  private static final int MOST_LETTERS = 3;
  private static final int MOST_DIGITS = 7;
  private static final char LAST_ASCII = 0x7F;

  /** What stands before each relative row number, and behind the last. */
  private final String[] texts;

  /** How far each of these numbers is from the row. */
  private final int[] distances;

  private FilledDown(String[] texts, int[] distances) {
    this.texts = texts;
    this.distances = distances;
  }

  /**
   * @param row of the cell that has the formula, from 0
   */
  static FilledDown of(String formula, int row) {
    return new Reading(formula, row).read();
  }

  /**
   * @param row of the cell that has the other formula
   */
  boolean matches(String formula, int row) {
    int at = 0;
    for (int i = 0; i < distances.length; i++) {
      if (!formula.startsWith(texts[i], at)) {
        return false;
      }
      at += texts[i].length();
      int end = at;
      int number = 0;
      while (end < formula.length() && isDigit(formula.charAt(end))) {
        number = end - at < MOST_DIGITS ? number * 10 + formula.charAt(end) - '0' : -1;
        end++;
      }
      if (end == at || end - at > MOST_DIGITS || number - row != distances[i]) {
        return false;
      }
      at = end;
    }
    String last = texts.length == 0 ? "" : texts[distances.length];
    return texts.length > 0
        && formula.length() - at == last.length()
        && formula.startsWith(last, at);
  }

  /** Takes a formula apart. */
  private static final class Reading {
    private static final FilledDown NOTHING = new FilledDown(new String[0], new int[0]);

    private final String formula;
    private final int row;
    private final List<String> texts = new ArrayList<>();
    private final List<Integer> distances = new ArrayList<>();
    private int at;
    private int taken;

    Reading(String formula, int row) {
      this.formula = formula;
      this.row = row;
    }

    FilledDown read() {
      while (at < formula.length()) {
        char c = formula.charAt(at);
        boolean plain = c == '"' || c == '\'' ? quoted(c) : inWord(c) ? word() : other(c);
        if (!plain) {
          return NOTHING;
        }
      }
      texts.add(formula.substring(taken));
      return new FilledDown(
          texts.toArray(String[]::new), distances.stream().mapToInt(Integer::intValue).toArray());
    }

    /** Brackets hold columns of tables and parts of other files. */
    private boolean other(char c) {
      at++;
      return c != '[';
    }

    private boolean quoted(char mark) {
      int end = formula.indexOf(mark, at + 1);
      at = end + 1;
      return end >= 0;
    }

    private boolean word() {
      int start = at;
      at = wordEnd(formula, start);
      if (namesSheets() || next(formula, at) == '(') {
        return true;
      }
      int digits = relativeRow(start);
      if (digits < 0) {
        return !(isNumber(start) && standsInRange(start));
      }
      texts.add(formula.substring(taken, start + digits));
      distances.add(Integer.parseInt(formula, start + digits, at, 10) - row);
      taken = at;
      return true;
    }

    /** How many characters stand before the relative row of a cell's name; -1 for all else. */
    private int relativeRow(int start) {
      int letters = next(formula, start) == '$' ? start + 1 : start;
      int digits = letters;
      while (digits < at && isLetter(formula.charAt(digits))) {
        digits++;
      }
      boolean column = digits > letters && digits - letters <= MOST_LETTERS;
      boolean number = digits < at && at - digits <= MOST_DIGITS;
      for (int i = digits; i < at && number; i++) {
        number = isDigit(formula.charAt(i));
      }
      return column && number ? digits - start : -1;
    }

    /** Whole rows, {@code 5:7}. */
    private boolean standsInRange(int start) {
      return next(formula, at) == ':' || start > 0 && formula.charAt(start - 1) == ':';
    }

    /** Whether the word is a sheet's name, or the first of two: {@code Lot5!A1, Lot5:Lot9!A1}. */
    private boolean namesSheets() {
      if (next(formula, at) == '!') {
        return true;
      }
      return next(formula, at) == ':' && next(formula, wordEnd(formula, at + 1)) == '!';
    }

    private boolean isNumber(int start) {
      for (int i = start; i < at; i++) {
        if (formula.charAt(i) != '$' && !isDigit(formula.charAt(i))) {
          return false;
        }
      }
      return true;
    }
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isLetter(char c) {
    return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
  }

  private static char next(String text, int at) {
    return at < text.length() ? text.charAt(at) : 0;
  }

  private static int wordEnd(String text, int from) {
    int end = from;
    while (end < text.length() && inWord(text.charAt(end))) {
      end++;
    }
    return end;
  }

  static boolean inWord(char c) {
    return isLetter(c)
        || isDigit(c)
        || c == '_'
        || c == '.'
        || c == '$'
        || c == '\\'
        || c == '?'
        || c > LAST_ASCII && (Character.isLetterOrDigit(c) || Character.isSurrogate(c));
  }
}
