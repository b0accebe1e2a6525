package fineweight.label;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The cells along one side of a page: labels and the gaps between them, in the dots that offices
 * measure columns and rows by. The edges are rounded, not the widths, so that no error adds up.
 */
final class Grid {
  /**
   * Columns are measured in widths of a digit of the workbook's first font (ECMA-376 part 1,
   * 18.3.1.13). A digit of this face at this size is 8 dots wide on every machine, because the
   * letters of practically every typewriter face are 0.6 of their height wide; the digits of other
   * faces are rounded by one office and not by the other.
   */
  static final String COUNTED_FACE = "Courier New";

  static final short COUNTED_POINTS = 10;
  static final int DOTS_A_DIGIT = 8;

  private static final BigDecimal DOTS_A_MILLIMETRE =
      BigDecimal.valueOf(96).divide(new BigDecimal("25.4"), 20, RoundingMode.HALF_UP);

  private final int labels;
  private final BigDecimal each;
  private final BigDecimal gap;
  private final int most;

  /**
   * @param labels how many lie along this side
   * @param each the length of one in millimetres
   * @param gap between two of them in millimetres
   * @param usable what they must not exceed in millimetres
   */
  Grid(int labels, BigDecimal each, BigDecimal gap, BigDecimal usable) {
    this.labels = labels;
    this.each = each;
    this.gap = gap;
    this.most = usable.multiply(DOTS_A_MILLIMETRE).setScale(0, RoundingMode.FLOOR).intValueExact();
  }

  private boolean hasGaps() {
    return gap.signum() > 0;
  }

  /** How many cells lie along this side, labels and gaps together. */
  int cells() {
    return hasGaps() ? 2 * labels - 1 : labels;
  }

  /** The cell of a label, both from 0. */
  int cellOf(int label) {
    return hasGaps() ? 2 * label : label;
  }

  /** The length of a cell, from 0: 96 dots and 72 points are an inch. */
  float points(int cell) {
    return dots(cell) * 0.75f;
  }

  /** The length of a cell, from 0. */
  int dots(int cell) {
    return edge(cell + 1) - edge(cell);
  }

  /** Where a cell begins. */
  private int edge(int cell) {
    int whole = hasGaps() ? cell / 2 : cell;
    BigDecimal at = each.add(gap).multiply(BigDecimal.valueOf(whole));
    if (hasGaps() && cell % 2 == 1) {
      at = at.add(each);
    }
    return Math.min(
        most, at.multiply(DOTS_A_MILLIMETRE).setScale(0, RoundingMode.HALF_UP).intValueExact());
  }
}
