package fineweight.typeset;

import fineweight.standard.CoinStandard;
import fineweight.standard.Mints;
import fineweight.standard.Years;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Makes a set of one coin of each date and mint out of standards. A catalogue of standards tells in
 * which years a coin was struck and where, not that every mint struck it every year: places that no
 * coin can fill are the collector's to strike out.
 */
public final class DateAndMintSet {
  /** The catalogue's letters for coins that bear no mark whatever their mint. */
  private static final String NO_MARK = "-";

  private DateAndMintSet() {}

  /**
   * One place for each date and mint.
   *
   * @param name of the set
   * @param standards the coins of the set, at least one
   * @param lastYear where coins that are still struck end
   * @throws IllegalArgumentException if there is no standard
   */
  public static TypeSet of(String name, List<CoinStandard> standards, int lastYear) {
    if (standards.isEmpty()) {
      throw new IllegalArgumentException("a set by date needs at least one standard");
    }
    Map<String, TypeEntry> entries = new LinkedHashMap<>();
    for (CoinStandard standard : standards) {
      for (Years.Range range : standard.issue().years().ranges()) {
        int last = Math.min(range.last(), lastYear);
        for (int year = range.first(); year <= last; year++) {
          addYear(entries, standard, year, standards);
        }
      }
    }
    return new TypeSet(name, new ArrayList<>(entries.values()));
  }

  /**
   * The same set with a place for each of these mints where the catalogue names none for a date.
   *
   * @param mints mint marks in capitals, an empty text for none
   */
  public static TypeSet ofMints(TypeSet dates, List<String> mints) {
    List<TypeEntry> places = new ArrayList<>();
    for (TypeEntry date : dates.entries()) {
      if (!date.mints().isEmpty()) {
        places.add(date);
        continue;
      }
      for (String mint : mints) {
        String mark = mint.isEmpty() ? "" : "-" + mint;
        places.add(
            new TypeEntry(
                date.key() + mark, date.name() + mark, date.origin(), date.years(), List.of(mint)));
      }
    }
    return new TypeSet(dates.name(), places);
  }

  private static void addYear(
      Map<String, TypeEntry> entries, CoinStandard standard, int year, List<CoinStandard> all) {
    if (standard.issue().mints().marks().isEmpty()) {
      add(entries, standard, year, "", List.of(), all);
    }
    for (Mints.Mark mark : standard.issue().mints().marks()) {
      if (mark.years().map(years -> years.contains(year)).orElse(true)) {
        boolean unmarked = mark.letters().equals(NO_MARK);
        List<String> marks =
            unmarked
                ? List.of("")
                : mark.orNone() ? List.of(mark.letters(), "") : List.of(mark.letters());
        add(entries, standard, year, unmarked ? "" : mark.letters(), marks, all);
      }
    }
  }

  /** A date that two of the standards share, such as one struck in two alloys, is one place. */
  private static void add(
      Map<String, TypeEntry> entries,
      CoinStandard standard,
      int year,
      String letters,
      List<String> marks,
      List<CoinStandard> all) {
    String date = letters.isEmpty() ? Integer.toString(year) : year + "-" + letters;
    String denomination = standard.issue().denomination();
    entries.putIfAbsent(
        denomination + " " + date,
        new TypeEntry(
            denomination + " " + date,
            date,
            new TypeEntry.Origin(
                standard.issue().country(),
                denomination,
                all.stream()
                    .filter(other -> other.issue().denomination().equals(denomination))
                    .map(CoinStandard::id)
                    .toList()),
            Years.of(year, year),
            marks));
  }
}
