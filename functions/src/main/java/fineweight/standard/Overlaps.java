package fineweight.standard;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/** Finds standards that claim the same coin and that no word of a description tells apart. */
public final class Overlaps {
  /** No distinction of the catalogue is limited to years beyond this one. */
  private static final int FAR = 2100;

  private Overlaps() {}

  /** Whether two standards of one denomination are wanted as a pair in a year that both have. */
  @FunctionalInterface
  private interface Wanted {
    boolean test(CoinStandard first, CoinStandard second, int year);
  }

  /**
   * Two standards of one issuer, one denomination and one mint mark with nothing to tell them
   * apart.
   *
   * @param first the one that stands first in the collection
   * @param second the other
   * @param year the first year in which both claim the coin
   */
  public record Overlap(CoinStandard first, CoinStandard second, int year) {}

  /**
   * The pairs among these standards that share issuer, a denomination, a year and a mint mark,
   * while neither variant nor {@code onlyIf} nor {@code tells} separates them in that year; in the
   * order of the collection.
   */
  public static List<Overlap> among(Collection<CoinStandard> standards) {
    return pairs(
        standards,
        (first, second, year) -> !toldApart(first.distinction(), second.distinction(), year));
  }

  /**
   * All pairs that share issuer, a denomination, a year and a mint mark, told apart or not; in the
   * order of the collection.
   */
  static List<Overlap> sameDated(Collection<CoinStandard> standards) {
    return pairs(standards, (first, second, year) -> true);
  }

  private static List<Overlap> pairs(Collection<CoinStandard> standards, Wanted wanted) {
    Map<List<String>, List<CoinStandard>> groups = new LinkedHashMap<>();
    for (CoinStandard standard : standards) {
      for (String denomination : standard.issue().denominations()) {
        groups
            .computeIfAbsent(
                List.of(standard.issue().country(), denomination), group -> new ArrayList<>())
            .add(standard);
      }
    }
    Set<Overlap> found = new LinkedHashSet<>();
    groups.values().forEach(group -> addPairs(group, wanted, found));
    return List.copyOf(found);
  }

  private static void addPairs(List<CoinStandard> group, Wanted wanted, Set<Overlap> found) {
    for (int i = 0; i < group.size(); i++) {
      CoinStandard first = group.get(i);
      for (CoinStandard second : group.subList(i + 1, group.size())) {
        OptionalInt year = sharedYear(first, second, wanted);
        if (year.isPresent()) {
          found.add(new Overlap(first, second, year.getAsInt()));
        }
      }
    }
  }

  private static OptionalInt sharedYear(CoinStandard first, CoinStandard second, Wanted wanted) {
    Years years = first.issue().years();
    Years others = second.issue().years();
    int end = Math.min(Math.min(years.last().orElse(FAR), others.last().orElse(FAR)), FAR);
    for (int year = Math.max(years.first(), others.first()); year <= end; year++) {
      if (years.contains(year)
          && others.contains(year)
          && first.issue().mints().sharesMark(second.issue().mints(), year)
          && wanted.test(first, second, year)) {
        return OptionalInt.of(year);
      }
    }
    return OptionalInt.empty();
  }

  private static boolean toldApart(Distinction first, Distinction second, int year) {
    String variant = first.variantIn(year);
    String otherVariant = second.variantIn(year);
    return (!variant.isEmpty() && !otherVariant.isEmpty() && !variant.equals(otherVariant))
        || !phrases(first.onlyIf(), year).equals(phrases(second.onlyIf(), year))
        || !phrases(first.tells(), year).equals(phrases(second.tells(), year));
  }

  private static Set<String> phrases(List<Tell> tells, int year) {
    Set<String> phrases = new LinkedHashSet<>();
    for (Tell tell : tells) {
      if (tell.holdsIn(year)) {
        phrases.add(tell.phrase());
      }
    }
    return phrases;
  }
}
