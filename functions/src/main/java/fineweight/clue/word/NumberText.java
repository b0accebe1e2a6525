package fineweight.clue.word;

import java.math.BigDecimal;
import java.util.Optional;

/** Numbers as people write them: decimal point or comma, with or without groups of three. */
public final class NumberText {
  private NumberText() {}

  /**
   * Reads {@code 12.5}, {@code 12,5}, {@code 1.690,00}, {@code 1,250.00}, {@code 1 250}. One comma
   * or point before exactly three last digits groups thousands only if the whole has groups of
   * three and a leading group of one to three digits other than zero.
   *
   * @return empty if the text is no number
   */
  public static Optional<BigDecimal> read(String text) {
    String plain = text.strip().replaceAll("(?<=\\d)[\\s\\u00a0\\u202f'’](?=\\d{3}\\b)", "");
    if (!plain.matches("[+-]?[0-9.,]*[0-9][0-9.,]*")) {
      return Optional.empty();
    }
    String decimal = pointed(plain);
    return decimal.matches("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)")
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
      boolean groups = text.matches("[+-]?[1-9]\\d{0,2}(,\\d{3})+");
      return groups ? text.replace(",", "") : text.replace(',', '.');
    }
    boolean severalPoints = lastPoint >= 0 && text.indexOf('.') != lastPoint;
    return severalPoints && text.matches("[+-]?[1-9]\\d{0,2}(\\.\\d{3})+")
        ? text.replace(".", "")
        : text;
  }
}
