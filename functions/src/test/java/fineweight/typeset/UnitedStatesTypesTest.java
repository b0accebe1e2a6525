package fineweight.typeset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fineweight.standard.CoinStandard;
import fineweight.standard.Standards;
import fineweight.standard.Years;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitedStatesTypesTest {
  private static final TypeSet SET = TypeSet.unitedStates();

  /** Coins that are no design for circulation: commemoratives, bullion, modern gold. */
  private static final String OUTSIDE =
      "us-(?:com|mcom|bullion|first-spouse|uhr|liberty-gold|centennial|mayflower|ww2|flowing-hair)-.*"
          + "|us-gold-4-.*|us-half-2014-W-gold|.*-generic-.*";

  private static List<CoinStandard> standards;

  @BeforeAll
  static void readTheCatalogue() {
    assumeTrue(Standards.class.getResource("us.csv") != null, "the catalogue is not in this build");
    standards = Standards.catalogue().of("US");
  }

  @Test
  void everyStandardOfTheSetIsInTheCatalogue() {
    List<String> ids = standards.stream().map(CoinStandard::id).toList();
    for (TypeEntry entry : SET.entries()) {
      assertThat(ids).as(entry.key()).containsAll(entry.origin().standards());
    }
  }

  @Test
  void everyYearOfAPlaceIsAYearOfOneOfItsStandards() {
    List<String> without = new ArrayList<>();
    for (TypeEntry entry : SET.entries()) {
      for (int year = entry.years().first(); year <= 2026; year++) {
        if (entry.years().contains(year) && !isStruck(entry, year)) {
          without.add(entry.key() + " " + year);
        }
      }
    }
    assertThat(without).isEmpty();
  }

  private static boolean isStruck(TypeEntry entry, int year) {
    return standards.stream()
        .anyMatch(one -> entry.origin().fits(one) && one.issue().years().contains(year));
  }

  @Test
  void everyDateOfACirculatingStandardHasAPlace() {
    List<String> without = new ArrayList<>();
    for (CoinStandard standard : standards) {
      if (!standard.id().matches(OUTSIDE)) {
        for (Years.Range range : standard.issue().years().ranges()) {
          for (int year = range.first(); year <= Math.min(range.last(), 2026); year++) {
            if (placesOf(standard, year).isEmpty()) {
              without.add(standard.id() + " " + year);
            }
          }
        }
      }
    }
    assertThat(without).isEmpty();
  }

  private static List<TypeEntry> placesOf(CoinStandard standard, int year) {
    return SET.entries().stream()
        .filter(entry -> entry.origin().fits(standard) && entry.years().contains(year))
        .toList();
  }

  /**
   * Years in which one standard was struck in two designs, so that the date alone does not settle
   * the place: known to every handbook of the series (from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "us-large-cent-1793-1795-heavy, 1793, 3",
    "us-large-cent-1795-1839-light, 1796, 2",
    "us-dollar-1794-1803, 1795, 2",
    "us-gold-dollar-1854-1889, 1856, 2",
    "us-gold-5-1795-1829, 1807, 2",
    "us-quarter-1965-2026-clad, 2021, 2",
    "us-dollar-1878-1921-morgan, 1921, 1",
    "us-dime-1916-1945-mercury, 1944, 1",
  })
  void datesWithTwoDesignsAreOpen(String id, int year, int places) {
    Optional<CoinStandard> standard =
        standards.stream().filter(one -> one.id().equals(id)).findFirst();
    assertThat(placesOf(standard.orElseThrow(), year)).hasSize(places);
  }
}
