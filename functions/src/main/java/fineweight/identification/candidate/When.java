package fineweight.identification.candidate;

import fineweight.standard.Years;
import java.util.OptionalInt;

/**
 * The date for which one answer is sought: a year, a span, or any. Immutable.
 *
 * @param first and {@code last} are counted in
 */
public record When(int first, int last) {
  public static final When ANY = new When(1, 9999);

  public static When year(int year) {
    return new When(year, year);
  }

  public OptionalInt year() {
    return first == last ? OptionalInt.of(first) : OptionalInt.empty();
  }

  public boolean meets(Profile profile) {
    return meets(profile.standard().issue().years());
  }

  boolean meets(Years years) {
    return years.overlaps(Years.of(first, last));
  }

  /** Whether something that holds in some years holds for this date. */
  public boolean within(java.util.Optional<Years> years) {
    return years.isEmpty() || meets(years.get());
  }

  /** Whether something that holds in some years holds for all years that this date may be. */
  public boolean isWithin(java.util.Optional<Years> years) {
    if (years.isEmpty()) {
      return true;
    }
    for (int year = first; year <= last && last - first <= 200; year++) {
      if (!years.get().contains(year)) {
        return false;
      }
    }
    return last - first <= 200;
  }

  @Override
  public String toString() {
    return equals(ANY)
        ? "any year"
        : first == last ? Integer.toString(first) : first + " to " + last;
  }
}
