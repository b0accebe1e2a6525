package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * The years of a denomination, over all its standards, have no hole but the pauses in {@code
 * known-pauses.csv}: years in which none was struck, or only pieces that the catalogue does not
 * hold. The pauses were read through from memory and not against mint reports; the list says which
 * could not be confirmed even so.
 */
class YearsWithoutHolesTest {
  @Test
  void everyHoleIsAKnownPauseAndEveryKnownPauseIsAHole() {
    TreeSet<String> known = new TreeSet<>();
    for (Map<String, String> row : ResourceTable.rows("known-pauses.csv")) {
      assertThat(row.get("why")).as(row.toString()).isNotBlank();
      assertThat(row.get("source")).as(row.toString()).isNotBlank();
      for (String denomination : row.get("denominations").split("; ", -1)) {
        for (Years.Range pause : Years.parse(row.get("years")).ranges()) {
          String place = row.get("country") + " " + denomination + " " + pause;
          assertThat(known.add(place)).as(place + " stands twice").isTrue();
        }
      }
    }
    TreeSet<String> holes = new TreeSet<>(holes(Standards.catalogue().all()));
    System.out.println(holes.size() + " holes between years, all known pauses");
    assertThat(minus(holes, known)).as("holes that are no known pause").isEmpty();
    assertThat(minus(known, holes)).as("known pauses that are no hole").isEmpty();
  }

  @Test
  void aHoleIsFoundOverAllStandardsOfADenomination() {
    List<CoinStandard> rows = new ArrayList<>(Standards.catalogue().all());
    assertThat(holes(rows)).contains("AU shilling 1945").doesNotContain("AU shilling 1944");
    rows.removeIf(row -> row.id().equals("us-nickel-1942-1945-war"));
    assertThat(holes(rows)).contains("US five cents 1943-1945");
  }

  private static TreeSet<String> minus(TreeSet<String> all, TreeSet<String> those) {
    TreeSet<String> left = new TreeSet<>(all);
    left.removeAll(those);
    return left;
  }

  private static List<String> holes(Collection<CoinStandard> standards) {
    Map<String, List<Years.Range>> struck = new LinkedHashMap<>();
    for (CoinStandard standard : standards) {
      for (String denomination : standard.issue().denominations()) {
        struck
            .computeIfAbsent(
                standard.issue().country() + " " + denomination, series -> new ArrayList<>())
            .addAll(standard.issue().years().ranges());
      }
    }
    List<String> holes = new ArrayList<>();
    struck.forEach((series, ranges) -> addHoles(series, ranges, holes));
    return holes;
  }

  private static void addHoles(String series, List<Years.Range> ranges, List<String> holes) {
    ranges.sort(Comparator.comparingInt(Years.Range::first));
    int last = ranges.get(0).last();
    for (Years.Range range : ranges) {
      if (range.first() - 1 > last) {
        holes.add(series + " " + new Years.Range(last + 1, range.first() - 1));
      }
      last = Math.max(last, range.last());
    }
  }
}
