package fineweight.label;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A width and a height in millimetres, none below zero. Immutable.
 *
 * @param width across the paper
 * @param height down the paper
 */
public record Extent(BigDecimal width, BigDecimal height) {
  private static final Pattern WRITTEN =
      Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*(?:mm)?\\s*[x×*]\\s*(\\d+(?:[.,]\\d+)?)\\s*(?:mm)?");

  /**
   * @throws IllegalArgumentException if one of them is below zero
   */
  public Extent {
    Objects.requireNonNull(width, "width");
    Objects.requireNonNull(height, "height");
    if (width.signum() < 0 || height.signum() < 0) {
      throw new IllegalArgumentException("a width and a height are not below zero");
    }
  }

  /** Reads "38x21", "63.5 x 38.1 mm" and the like; empty if the words are no such thing. */
  public static Optional<Extent> read(String words) {
    Matcher written = WRITTEN.matcher(words.strip().toLowerCase(java.util.Locale.ROOT));
    return written.matches()
        ? Optional.of(new Extent(figure(written.group(1)), figure(written.group(2))))
        : Optional.empty();
  }

  private static BigDecimal figure(String text) {
    return new BigDecimal(text.replace(',', '.'));
  }

  Extent turned() {
    return new Extent(height, width);
  }

  /** Such as "38 x 21 mm". */
  public String words() {
    return plain(width) + " x " + plain(height) + " mm";
  }

  static String plain(BigDecimal figure) {
    return figure.signum() == 0 ? "0" : figure.stripTrailingZeros().toPlainString();
  }
}
