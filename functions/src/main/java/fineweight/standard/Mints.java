package fineweight.standard;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.StringJoiner;

/**
 * The mint marks a standard is known with, such as {@code P (none); D; S (1938-1941)}. No entry
 * means: any. Immutable.
 *
 * @param marks empty if every mint mark is possible
 */
public record Mints(List<Mark> marks) {
  public static final Mints ANY = new Mints(List.of());

  /**
   * One mint mark.
   *
   * @param letters the mark in capitals, such as {@code CC}
   * @param orNone whether the coin may bear no mark at all and still be of this mint
   * @param years the years in which this mark occurs; empty for all
   */
  public record Mark(String letters, boolean orNone, Optional<Years> years) {
    boolean occursIn(int year) {
      return years.isEmpty() || years.get().contains(year);
    }

    @Override
    public String toString() {
      return letters + (orNone ? " (none)" : "") + years.map(y -> " (" + y + ")").orElse("");
    }
  }

  public Mints {
    marks = List.copyOf(marks);
  }

  /**
   * Reads {@code P (none); D; S (1938-1941)}; an empty text is {@link #ANY}.
   *
   * @throws IllegalArgumentException if the text is not of this form
   */
  public static Mints parse(String text) {
    if (text.isBlank()) {
      return ANY;
    }
    List<Mark> marks = new ArrayList<>();
    int depth = 0;
    int start = 0;
    for (int i = 0; i <= text.length(); i++) {
      char c = i == text.length() ? ';' : text.charAt(i);
      if (c == '(') {
        depth++;
      } else if (c == ')') {
        depth--;
      } else if (c == ';' && (depth == 0 || i == text.length())) {
        marks.add(parseMark(text.substring(start, i).strip()));
        start = i + 1;
      }
    }
    return new Mints(marks);
  }

  private static Mark parseMark(String text) {
    String[] words = text.split("[()]", -1);
    String letters = words[0].strip();
    if (!letters.matches("[\\p{Lu}\\p{Nd}.°*+-]{1,6}")) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is no mint mark; expected capitals such as D or CC");
    }
    boolean orNone = false;
    Optional<Years> years = Optional.empty();
    for (int i = 1; i < words.length; i++) {
      String bracket = words[i].strip();
      if (bracket.equals("none")) {
        orNone = true;
      } else if (!bracket.isEmpty()) {
        years = Optional.of(Years.parse(bracket));
      }
    }
    return new Mark(letters.toUpperCase(Locale.ROOT), orNone, years);
  }

  /**
   * Whether a coin of that year may bear this mark.
   *
   * @param letters the mark in capitals; empty for a coin without a mark
   */
  public boolean allow(String letters, int year) {
    if (marks.isEmpty()) {
      return true;
    }
    for (Mark mark : marks) {
      boolean same = letters.isEmpty() ? mark.orNone() : mark.letters().equals(letters);
      if (same && mark.occursIn(year)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether every coin of that year was struck at one of the mints meant.
   *
   * @param year empty for any year
   * @param letters marks in capitals, an empty text for none
   * @return false where no mint is known
   */
  public boolean onlyOf(List<String> letters, OptionalInt year) {
    return !marks.isEmpty()
        && marks.stream()
            .filter(mark -> year.isEmpty() || mark.occursIn(year.getAsInt()))
            .allMatch(
                mark ->
                    letters.contains(mark.letters()) || (mark.orNone() && letters.contains("")));
  }

  /** The years in which a mark occurs, where they are narrower than those of the coin. */
  public Optional<Years> yearsOf(String letters) {
    List<Mark> bearing =
        marks.stream()
            .filter(mark -> mark.letters().equals(letters) || (mark.orNone() && letters.isEmpty()))
            .toList();
    return bearing.size() == 1 ? bearing.get(0).years() : Optional.empty();
  }

  /** Whether one coin of that year may bear a mark, or none, that both allow. */
  boolean sharesMark(Mints other, int year) {
    if (marks.isEmpty() || other.marks.isEmpty()) {
      return true;
    }
    for (Mark mark : marks) {
      if (mark.occursIn(year)
          && (other.allow(mark.letters(), year) || (mark.orNone() && other.allow("", year)))) {
        return true;
      }
    }
    return false;
  }

  /** The form that {@link #parse} reads. */
  @Override
  public String toString() {
    StringJoiner joined = new StringJoiner("; ");
    marks.forEach(mark -> joined.add(mark.toString()));
    return joined.toString();
  }
}
