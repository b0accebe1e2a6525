package fineweight.clue;

import java.util.List;

/**
 * What is said of the date. Immutable.
 *
 * @param years see {@link Kind}
 * @param words as written; empty if nothing is said
 */
public record Dating(Kind kind, List<Integer> years, String words) {
  public static final Dating UNSAID = new Dating(Kind.UNSAID, List.of(), "");

  /** How the years are meant. */
  public enum Kind {
    /** Nothing is said, or the date is worn off. */
    UNSAID,
    /** Each year is the date of a piece. */
    YEARS,
    /** Two digits only, such as {@code 64}: the century is open. */
    SHORT_YEARS,
    /** First and last year of a span in which the date lies ({@code 16xx}, {@code 1964?}). */
    SPAN,
    /** Before the year 1000, or before the common era. */
    ANCIENT,
    /** The field holds something that is no date. */
    UNREADABLE,
    /** A number that no coin bears. */
    IMPOSSIBLE
  }

  public Dating {
    years = List.copyOf(years);
  }
}
