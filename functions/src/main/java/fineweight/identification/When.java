package fineweight.identification;

import fineweight.standard.Years;
import java.util.OptionalInt;

/**
 * The date for which one answer is sought: a year, a span, or any. Immutable.
 *
 * @param first and {@code last} are counted in
 */
record When(int first, int last) {
  static final When ANY = new When(1, 9999);

  static When year(int year) {
    return new When(year, year);
  }

  OptionalInt year() {
    return first == last ? OptionalInt.of(first) : OptionalInt.empty();
  }

  boolean meets(Years years) {
    return years.overlaps(Years.of(first, last));
  }

  /** Whether something that holds in some years holds for this date. */
  boolean within(java.util.Optional<Years> years) {
    return years.isEmpty() || meets(years.get());
  }

  @Override
  public String toString() {
    return equals(ANY)
        ? "any year"
        : first == last ? Integer.toString(first) : first + " to " + last;
  }
}
