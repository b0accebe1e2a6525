package fineweight.standard;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.StringJoiner;

/**
 * Years as ascending ranges without overlap, such as {@code 1916-1921;1923-1931}. Both ends of a
 * range count. The last range may be open ({@code 1986-}): still struck. Years before the common
 * era are not held. Immutable.
 *
 * @param ranges at least one, ascending, without overlap
 */
public record Years(List<Range> ranges) {
  /** One year more than any coin can bear; the end of an open range. */
  private static final int OPEN = Integer.MAX_VALUE;

  /**
   * @param first the first year, 1 to 9999
   * @param last the last year, not before the first; {@link Integer#MAX_VALUE} if still struck
   */
  public record Range(int first, int last) {
    /**
     * @throws IllegalArgumentException if the first year is not within 1 to 9999 or the last lies
     *     before it
     */
    public Range {
      if (first < 1 || first > 9999) {
        throw new IllegalArgumentException("year " + first + " is outside 1 to 9999");
      }
      if (last < first) {
        throw new IllegalArgumentException(
            "the range " + first + "-" + last + " ends before it begins");
      }
    }

    public boolean isOpen() {
      return last == OPEN;
    }

    boolean contains(int year) {
      return year >= first && year <= last;
    }

    @Override
    public String toString() {
      return isOpen() ? first + "-" : first == last ? Integer.toString(first) : first + "-" + last;
    }
  }

  /**
   * @throws IllegalArgumentException if there is no range, or the ranges do not ascend without
   *     overlap
   */
  public Years {
    ranges = List.copyOf(Objects.requireNonNull(ranges, "ranges"));
    if (ranges.isEmpty()) {
      throw new IllegalArgumentException("at least one year is needed");
    }
    for (int i = 1; i < ranges.size(); i++) {
      if (ranges.get(i - 1).last() >= ranges.get(i).first()) {
        throw new IllegalArgumentException(
            "the ranges "
                + ranges.get(i - 1)
                + " and "
                + ranges.get(i)
                + " overlap or do not ascend");
      }
    }
  }

  public static Years of(int first, int last) {
    return new Years(List.of(new Range(first, last)));
  }

  /**
   * Reads {@code 1916}, {@code 1916-1921;1923-1931} or {@code 1986-}.
   *
   * @throws IllegalArgumentException if the text is not of this form
   */
  public static Years parse(String text) {
    List<Range> ranges = new ArrayList<>();
    for (String piece : text.split(";", -1)) {
      ranges.add(parseRange(piece.strip()));
    }
    return new Years(ranges);
  }

  private static Range parseRange(String text) {
    int dash = text.indexOf('-');
    try {
      if (dash < 0) {
        int year = Integer.parseInt(text);
        return new Range(year, year);
      }
      int first = Integer.parseInt(text.substring(0, dash));
      String rest = text.substring(dash + 1);
      return new Range(first, rest.isEmpty() ? OPEN : Integer.parseInt(rest));
    } catch (NumberFormatException notAYear) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is no year and no range of years", notAYear);
    }
  }

  public boolean contains(int year) {
    for (Range range : ranges) {
      if (range.contains(year)) {
        return true;
      }
    }
    return false;
  }

  /** Whether some year lies in both. */
  public boolean overlaps(Years other) {
    for (Range mine : ranges) {
      for (Range theirs : other.ranges) {
        if (mine.first() <= theirs.last() && theirs.first() <= mine.last()) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether every year of the other lies in these. */
  public boolean cover(Years other) {
    return other.ranges.stream().allMatch(this::cover);
  }

  private boolean cover(Range theirs) {
    int from = theirs.first();
    for (Range mine : ranges) {
      if (mine.contains(from)) {
        if (mine.last() >= theirs.last()) {
          return true;
        }
        from = mine.last() + 1;
      }
    }
    return false;
  }

  public int first() {
    return ranges.get(0).first();
  }

  /** The last year; empty if the coin is still struck. */
  public OptionalInt last() {
    Range end = ranges.get(ranges.size() - 1);
    return end.isOpen() ? OptionalInt.empty() : OptionalInt.of(end.last());
  }

  /** The form that {@link #parse} reads. */
  @Override
  public String toString() {
    StringJoiner joined = new StringJoiner(";");
    ranges.forEach(range -> joined.add(range.toString()));
    return joined.toString();
  }
}
