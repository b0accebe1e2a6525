package fineweight.workbook.xlsx.formula;

/**
 * Tells whether a formula is the one above it, filled down: the same but for its relative row
 * numbers. Where this is not plain the answer is no, which costs time and nothing else.
 */
final class FilledDown {
  private static final int MOST_LETTERS = 3;
  private static final int MOST_DIGITS = 7;
  private static final char LAST_ASCII = 0x7F;

  private final String above;
  private final String below;
  private final int distance;
  private int first;
  private int second;

  private FilledDown(String above, String below, int distance) {
    this.above = above;
    this.below = below;
    this.distance = distance;
  }

  /**
   * @param distance rows between the two, at least 1
   */
  static boolean same(String above, String below, int distance) {
    return new FilledDown(above, below, distance).same();
  }

  private boolean same() {
    while (first < above.length() && second < below.length()) {
      char c = above.charAt(first);
      if (c != below.charAt(second)) {
        return false;
      }
      boolean met = c == '"' || c == '\'' ? sameQuoted(c) : inWord(c) ? sameWord() : samePlain(c);
      if (!met) {
        return false;
      }
    }
    return first == above.length() && second == below.length();
  }

  /** Brackets hold columns of tables and parts of other files: compared as a whole elsewhere. */
  private boolean samePlain(char c) {
    first++;
    second++;
    return c != '[';
  }

  private boolean sameQuoted(char mark) {
    int start = first;
    int end = above.indexOf(mark, first + 1);
    if (end < 0 || !below.startsWith(above.substring(start, end + 1), second)) {
      return false;
    }
    second += end + 1 - start;
    first = end + 1;
    return true;
  }

  private boolean sameWord() {
    int one = first;
    int other = second;
    first = wordEnd(above, one);
    second = wordEnd(below, other);
    boolean equal = above.regionMatches(one, below, other, Math.max(first - one, second - other));
    if (namesSheets(above, first) || namesSheets(below, second)) {
      return equal;
    }
    if (next(above, first) == '(' && next(below, second) == '(') {
      return equal;
    }
    int digits = relativeRow(above, one, first);
    if (equal) {
      return digits < 0 && !(isNumber(one) && standsInRange(one));
    }
    return digits >= 0
        && digits == relativeRow(below, other, second)
        && above.regionMatches(one, below, other, digits)
        && number(below, other + digits, second) - number(above, one + digits, first) == distance;
  }

  /**
   * How many letters stand before the row number in a cell's name whose row is relative; -1 for all
   * else.
   */
  private static int relativeRow(String text, int start, int end) {
    int letters = next(text, start) == '$' ? start + 1 : start;
    int at = letters;
    while (at < end && isLetter(text.charAt(at))) {
      at++;
    }
    boolean column = at > letters && at - letters <= MOST_LETTERS;
    boolean row = at < end && end - at <= MOST_DIGITS;
    for (int i = at; i < end && row; i++) {
      row = isDigit(text.charAt(i));
    }
    return column && row ? at - start : -1;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isLetter(char c) {
    return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
  }

  private static int number(String text, int start, int end) {
    return Integer.parseInt(text, start, end, 10);
  }

  /** Whole rows, {@code 5:7}. */
  private boolean standsInRange(int start) {
    return next(above, first) == ':' || start > 0 && above.charAt(start - 1) == ':';
  }

  /** Whether the word is a sheet's name, or the first of two: {@code Lot5!A1, Lot5:Lot9!A1}. */
  private static boolean namesSheets(String text, int at) {
    if (next(text, at) == '!') {
      return true;
    }
    return next(text, at) == ':' && next(text, wordEnd(text, at + 1)) == '!';
  }

  private boolean isNumber(int start) {
    for (int i = start; i < first; i++) {
      if (above.charAt(i) != '$' && !isDigit(above.charAt(i))) {
        return false;
      }
    }
    return true;
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
