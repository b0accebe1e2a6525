package fineweight.workbook.xlsx.style;

import java.util.Locale;

/**
 * Tells from a number format whether it shows a date. Built-in numbers by ECMA-376 part 1, 18.8.30
 * (from memory).
 */
final class DateFormats {
  /** What a number format makes of a number. */
  enum Shows {
    NUMBER,
    DATE,
    YEAR
  }

  private DateFormats() {}

  static Shows builtIn(int id) {
    boolean date =
        id >= 14 && id <= 22
            || id >= 27 && id <= 36
            || id >= 45 && id <= 47
            || id >= 50 && id <= 58;
    return date ? Shows.DATE : Shows.NUMBER;
  }

  static Shows custom(String code) {
    String letters = withoutLiterals(code).toLowerCase(Locale.ROOT);
    boolean year = letters.indexOf('y') >= 0;
    boolean other = letters.chars().anyMatch(c -> c == 'm' || c == 'd' || c == 'h' || c == 's');
    if (letters.equals("general") || !year && !other) {
      return Shows.NUMBER;
    }
    return year && !other ? Shows.YEAR : Shows.DATE;
  }

  /** The first section without quoted text, escaped characters and bracketed conditions. */
  private static String withoutLiterals(String code) {
    StringBuilder rest = new StringBuilder();
    for (int i = 0; i < code.length() && code.charAt(i) != ';'; i++) {
      char c = code.charAt(i);
      switch (c) {
        case '"' -> i = end(code, '"', i);
        case '\\', '_', '*' -> i++;
        case '[' -> {
          int close = end(code, ']', i);
          rest.append(elapsed(code.substring(i + 1, Math.max(i + 1, close))));
          i = close;
        }
        default -> rest.append(c);
      }
    }
    return rest.toString();
  }

  private static int end(String code, char closing, int from) {
    int close = code.indexOf(closing, from + 1);
    return close < 0 ? code.length() : close;
  }

  /** {@code [h]}, {@code [mm]} and {@code [ss]} count time; other brackets are conditions. */
  private static String elapsed(String bracket) {
    return bracket.matches("(?i)h+|m+|s+") ? bracket : "";
  }
}
