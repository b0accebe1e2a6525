package fineweight.workbook.xlsx.formula;

/**
 * Tells whether a formula is the one above it, filled down: the same but for its relative row
 * numbers. Where this is not plain the answer is no, which costs time and nothing else.
 */
final class FilledDown {
  private static final int MOST_LETTERS = 3;
  private static final int MOST_DIGITS = 7;

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
    String one = word(above, first);
    String other = word(below, second);
    first += one.length();
    second += other.length();
    if (namesSheets(above, first) || namesSheets(below, second)) {
      return one.equals(other);
    }
    if (next(above, first) == '(' && next(below, second) == '(') {
      return one.equals(other);
    }
    if (one.equals(other)) {
      return relativeRow(one) < 0 && !(isNumber(one) && standsInRange(one));
    }
    int digits = relativeRow(one);
    return digits >= 0
        && digits == relativeRow(other)
        && one.regionMatches(0, other, 0, digits)
        && number(other, digits) - number(one, digits) == distance;
  }

  /** Where the row number begins in a cell's name whose row is relative; -1 for all else. */
  private static int relativeRow(String word) {
    int letters = word.startsWith("$") ? 1 : 0;
    int at = letters;
    while (at < word.length() && isLetter(word.charAt(at))) {
      at++;
    }
    boolean column = at > letters && at - letters <= MOST_LETTERS;
    boolean row = at < word.length() && word.length() - at <= MOST_DIGITS;
    for (int i = at; i < word.length(); i++) {
      row &= word.charAt(i) >= '0' && word.charAt(i) <= '9';
    }
    return column && row ? at : -1;
  }

  private static boolean isLetter(char c) {
    return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
  }

  private static int number(String word, int digits) {
    return Integer.parseInt(word, digits, word.length(), 10);
  }

  /** Whole rows, {@code 5:7}. */
  private boolean standsInRange(String one) {
    int before = first - one.length() - 1;
    return next(above, first) == ':' || before >= 0 && above.charAt(before) == ':';
  }

  /** Whether the word is a sheet's name, or the first of two: {@code Lot5!A1, Lot5:Lot9!A1}. */
  private static boolean namesSheets(String text, int at) {
    if (next(text, at) == '!') {
      return true;
    }
    return next(text, at) == ':' && next(text, at + 1 + word(text, at + 1).length()) == '!';
  }

  private static boolean isNumber(String word) {
    return word.chars().allMatch(c -> c == '$' || c >= '0' && c <= '9');
  }

  private static char next(String text, int at) {
    return at < text.length() ? text.charAt(at) : 0;
  }

  private static String word(String text, int from) {
    int end = from;
    while (end < text.length() && inWord(text.charAt(end))) {
      end++;
    }
    return text.substring(from, end);
  }

  static boolean inWord(char c) {
    return Character.isLetterOrDigit(c)
        || c == '_'
        || c == '.'
        || c == '$'
        || c == '\\'
        || c == '?'
        || Character.isSurrogate(c);
  }
}
