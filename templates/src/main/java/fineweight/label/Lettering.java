package fineweight.label;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * How large letters can be so that the words of a label fit into it. The widths are those of a wide
 * sans-serif face, so that they hold for a narrower one too; the fonts of the reader's machine are
 * not known.
 */
final class Lettering {
  /** In half points: from 10 down to 4.5. */
  private static final int LARGEST = 20;

  private static final int SMALLEST = 9;

  /**
   * Below this the eye tires, so labels with little to say are not made as small as the fullest.
   */
  private static final int LEAST_COMMON = 13;

  /** Line to line, in parts of the height of the letters. */
  private static final BigDecimal SPACING = new BigDecimal("1.2");

  /** What stays free inside a label, at both sides together. */
  private static final BigDecimal INSIDE = new BigDecimal("2.0");

  private static final BigDecimal POINTS_A_MILLIMETRE =
      BigDecimal.valueOf(72).divide(new BigDecimal("25.4"), 6, RoundingMode.HALF_UP);

  private static final BigDecimal HALF = new BigDecimal("0.5");

  private final BigDecimal width;
  private final BigDecimal height;

  Lettering(Extent label) {
    width = label.width().subtract(INSIDE).multiply(POINTS_A_MILLIMETRE);
    height = label.height().subtract(BigDecimal.ONE).multiply(POINTS_A_MILLIMETRE);
  }

  /** The size in half points at which most labels are written. */
  int common(List<Label> labels) {
    int common = LARGEST;
    for (Label label : labels) {
      common = Math.min(common, largest(label));
    }
    return Math.max(common, LEAST_COMMON);
  }

  /** The largest size in half points at which the label's words fit; the smallest if none does. */
  int largest(Label label) {
    int size = LARGEST;
    while (size > SMALLEST && !fits(label, size)) {
      size--;
    }
    return size;
  }

  /** Whether the words fit at the smallest size. */
  boolean fits(Label label) {
    return fits(label, SMALLEST);
  }

  private boolean fits(Label label, int halfPoints) {
    BigDecimal points = BigDecimal.valueOf(halfPoints).multiply(HALF);
    long lines = 0;
    for (int i = 0; i < label.lines().size(); i++) {
      long broken = lines(label.lines().get(i), points, i == 0);
      if (broken == 0) {
        return false;
      }
      lines += broken;
    }
    return points.multiply(SPACING).multiply(BigDecimal.valueOf(lines)).compareTo(height) <= 0;
  }

  /** How many lines the words take; 0 if one of them is wider than the label. */
  private long lines(String words, BigDecimal points, boolean bold) {
    BigDecimal space = width(" ", points, bold);
    BigDecimal used = BigDecimal.ZERO;
    long lines = 1;
    for (String word : words.split(" ")) {
      BigDecimal wide = width(word, points, bold);
      if (wide.compareTo(width) > 0) {
        return 0;
      }
      BigDecimal with = used.signum() == 0 ? wide : used.add(space).add(wide);
      if (with.compareTo(width) > 0) {
        lines++;
        with = wide;
      }
      used = with;
    }
    return lines;
  }

  private static BigDecimal width(String words, BigDecimal points, boolean bold) {
    long thousandths = words.chars().mapToLong(Lettering::thousandths).sum();
    BigDecimal plain = BigDecimal.valueOf(thousandths).movePointLeft(3).multiply(points);
    return bold ? plain.multiply(new BigDecimal("1.12")) : plain;
  }

  /** In thousandths of the height; common practice, no source. */
  private static int thousandths(int letter) {
    if (" .,:;'|!ijlI()[]/-".indexOf(letter) >= 0) {
      return 360;
    }
    if ("mwMW@%".indexOf(letter) >= 0) {
      return 980;
    }
    return Character.isUpperCase(letter) ? 720 : letter > 0x2E80 ? 1000 : 630;
  }
}
