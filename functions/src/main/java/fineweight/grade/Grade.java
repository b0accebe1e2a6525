package fineweight.grade;

import java.util.Optional;

/**
 * A grade on the scale from 1 to 70, or a range of it where the words leave one open ({@code VF} is
 * 20 to 35). The scale was published by Sheldon in 1949 for large cents and was taken over by the
 * trade; which word stands for which numbers is common practice. Immutable.
 *
 * @param low the lowest number the words allow, 1 to 70
 * @param high the highest, not below the lowest
 * @param proof whether the words speak of a proof
 */
public record Grade(int low, int high, boolean proof) {
  /**
   * @throws IllegalArgumentException if a number lies outside 1 to 70 or the range is reversed
   */
  public Grade {
    if (low < 1 || high > 70 || high < low) {
      throw new IllegalArgumentException(
          "a grade lies within 1 to 70, lowest first, not " + low + " to " + high);
    }
  }

  public static Grade of(int number) {
    return new Grade(number, number, false);
  }

  public static Grade between(int low, int high) {
    return new Grade(low, high, false);
  }

  /**
   * Reads what collectors write: {@code VF}, {@code VF-30}, {@code MS65+}, {@code F/VF}, {@code
   * extremely fine}, {@code PR 67}, {@code BU}, {@code 45}.
   *
   * @return empty if the text names no grade, or a number that its word does not stand for
   */
  public static Optional<Grade> read(String text) {
    return GradeWords.read(text);
  }

  /** Whether the words leave a single number. */
  public boolean isExact() {
    return low == high;
  }

  /** Whether this grade is higher, whatever number either range stands for. */
  public boolean surelyAbove(Grade other) {
    return low > other.high;
  }

  @Override
  public String toString() {
    return (proof ? "PR " : "") + (isExact() ? Integer.toString(low) : low + " to " + high);
  }
}
