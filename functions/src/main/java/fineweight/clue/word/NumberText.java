package fineweight.clue.word;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers as people write them: decimal point or comma, with or without groups of three. */
public final class NumberText {
  private static final Pattern COMMA_GROUPS = Pattern.compile("[+-]?[1-9]\\d{0,2}(,\\d{3})+");
  private static final Pattern POINT_GROUPS = Pattern.compile("[+-]?[1-9]\\d{0,2}(\\.\\d{3})+");

  private static final Pattern GROUPING =
      Pattern.compile("(?<=\\d)[\\s\\u00a0\\u202f'’](?=\\d{3}\\b)");
  private static final Pattern DIGITS = Pattern.compile("[+-]?[0-9.,]*[0-9][0-9.,]*");
  private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)");

  private NumberText() {}

  /**
   * Reads {@code 12.5}, {@code 12,5}, {@code 1.690,00}, {@code 1,250.00}, {@code 1 250}. One comma
   * or point before exactly three last digits groups thousands only if the whole has groups of
   * three and a leading group of one to three digits other than zero.
   *
   * @return empty if the text is no number
   */
  public static Optional<BigDecimal> read(String text) {
    String plain = GROUPING.matcher(text.strip()).replaceAll("");
    if (!DIGITS.matcher(plain).matches()) {
      return Optional.empty();
    }
    String decimal = pointed(plain);
    return DECIMAL.matcher(decimal).matches()
        ? Optional.of(new BigDecimal(decimal))
        : Optional.empty();
  }

  private static String pointed(String text) {
    int lastComma = text.lastIndexOf(',');
    int lastPoint = text.lastIndexOf('.');
    if (lastComma >= 0 && lastPoint >= 0) {
      boolean commaDecides = lastComma > lastPoint;
      String grouping = commaDecides ? "." : ",";
      return text.replace(grouping, "").replace(',', '.');
    }
    if (lastComma >= 0) {
      boolean groups = COMMA_GROUPS.matcher(text).matches();
      return groups ? text.replace(",", "") : text.replace(',', '.');
    }
    boolean severalPoints = lastPoint >= 0 && text.indexOf('.') != lastPoint;
    return severalPoints && POINT_GROUPS.matcher(text).matches() ? text.replace(".", "") : text;
  }
}
