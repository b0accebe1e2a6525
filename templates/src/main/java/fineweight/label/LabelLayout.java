package fineweight.label;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * How labels lie on a page. Immutable.
 *
 * @param label the size of one
 * @param gaps between two labels, across and down
 * @param frames whether each label gets a thin line around it to cut along
 */
public record LabelLayout(Paper paper, Extent label, Margins margins, Extent gaps, boolean frames) {
  /** Nothing smaller holds a readable word. */
  private static final BigDecimal SMALLEST = BigDecimal.valueOf(5);

  /**
   * @throws IllegalArgumentException if not one label fits, or it is too small for words
   */
  public LabelLayout {
    Objects.requireNonNull(paper, "paper");
    Objects.requireNonNull(gaps, "gaps");
    if (label.width().compareTo(SMALLEST) < 0 || label.height().compareTo(SMALLEST) < 0) {
      throw new IllegalArgumentException(
          "a label of " + label.words() + " is too small for words; give at least 5x5");
    }
    if (fit(usable(paper, margins).width(), label.width(), gaps.width()) < 1
        || fit(usable(paper, margins).height(), label.height(), gaps.height()) < 1) {
      throw new IllegalArgumentException(
          "a label of "
              + label.words()
              + " does not fit on paper of "
              + paper.size().words()
              + " within these margins; give smaller margins or larger paper");
    }
  }

  private static Extent usable(Paper paper, Margins margins) {
    BigDecimal width = paper.size().width().subtract(margins.left()).subtract(margins.right());
    BigDecimal height = paper.size().height().subtract(margins.top()).subtract(margins.bottom());
    return new Extent(width.max(BigDecimal.ZERO), height.max(BigDecimal.ZERO));
  }

  /** The paper without its margins. */
  Extent usable() {
    return usable(paper, margins);
  }

  private static int fit(BigDecimal space, BigDecimal each, BigDecimal gap) {
    return space.add(gap).divide(each.add(gap), 0, RoundingMode.FLOOR).intValue();
  }

  /** How many labels lie side by side, at least one. */
  public int across() {
    return fit(usable().width(), label.width(), gaps.width());
  }

  /** How many rows of labels a page has, at least one. */
  public int down() {
    return fit(usable().height(), label.height(), gaps.height());
  }

  /** How many labels a page has. */
  public int perPage() {
    return across() * down();
  }
}
