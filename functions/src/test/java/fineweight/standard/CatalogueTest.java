package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The rows of the catalogue against one another and against arithmetic. */
class CatalogueTest {
  private final Standards catalogue = Standards.catalogue();

  @Test
  void everyRowOfEveryFileIsLoadedOnce() {
    List<String> ids = ResourceTable.catalogue().stream().map(row -> row.get("id")).toList();
    assertThat(ids).doesNotHaveDuplicates().hasSizeGreaterThan(990);
    assertThat(catalogue.all()).extracting(CoinStandard::id).containsExactlyElementsOf(ids);
  }

  @Test
  void eachFileHoldsOneIssuerAndIsNamedAfterIt() {
    for (String file : ResourceTable.lines("files-americas.txt")) {
      Set<String> issuers =
          ResourceTable.rows(file).stream()
              .map(row -> row.get("country"))
              .collect(Collectors.toCollection(TreeSet::new));
      assertThat(issuers).as(file).hasSize(1);
      assertThat(issuers.iterator().next().toLowerCase(Locale.ROOT).replace(' ', '-'))
          .isEqualTo(file.replace(".csv", ""));
    }
  }

  @Test
  void compositionsNameEverythingButAThousandth() {
    assertThat(catalogue.all())
        .filteredOn(standard -> !CatalogueArithmetic.namesEverything(standard))
        .extracting(CoinStandard::id)
        .isEmpty();
  }

  @Test
  void statedFineMassAgreesWithGrossMassTimesFineness() {
    assertThat(catalogue.all())
        .filteredOn(standard -> !CatalogueArithmetic.statedFineMassFits(standard))
        .extracting(CoinStandard::id)
        .isEmpty();
  }

  /** The rows where the issuer's figures differ by more than their last digits are known. */
  @Test
  void statedFineMassIsTheProductButForKnownRows() {
    assertThat(catalogue.all())
        .filteredOn(standard -> !CatalogueArithmetic.fineMassIsTheProduct(standard))
        .extracting(CoinStandard::id)
        .containsExactlyInAnyOrderElementsOf(ResourceTable.lines("fine-mass-not-the-product.txt"));
  }

  @Test
  void gramsAreTheGrainsRounded() {
    assertThat(ResourceTable.catalogue())
        .filteredOn(row -> !CatalogueArithmetic.gramsAreGrainsRounded(row))
        .extracting(row -> row.get("id"))
        .isEmpty();
  }

  @Test
  void stillStruckIsWrittenWithAnOpenEnd() {
    List<String> closed =
        catalogue.all().stream()
            .filter(standard -> standard.issue().years().last().orElse(0) == 2026)
            .map(CoinStandard::id)
            .toList();
    // The cent ended in 2025 for circulation and in 2026 for collectors; commemoratives have
    // programmes by law, known to 2026.
    assertThat(closed)
        .filteredOn(id -> id.startsWith("us-"))
        .containsExactlyInAnyOrder(
            "us-cent-2010-2026-zinc",
            "us-mcom-half-clad-1986-2026",
            "us-mcom-dollar-999-2019-2026",
            "us-mcom-gold-5-1986-2026");
  }

  @Test
  void variantsHoldYearsInEveryPartOrInNone() {
    List<String> mixed = new ArrayList<>();
    for (CoinStandard standard : catalogue.all()) {
      String variant = standard.distinction().variant();
      String[] parts = variant.split(";", -1);
      if (parts.length > 1) {
        for (String part : parts) {
          if (!part.strip().matches("\\d{4}(-(\\d{4})?)?: .+")) {
            mixed.add(standard.id() + ": " + variant);
          }
        }
      }
    }
    assertThat(mixed).isEmpty();
  }

  @Test
  void wordsThatTellAreInNormalForm() {
    List<String> odd = new ArrayList<>();
    for (Map<String, String> row : ResourceTable.catalogue()) {
      for (String column : List.of("only_if", "tells")) {
        for (String phrase : row.get(column).split(";", -1)) {
          String words = phrase.replaceAll("^\\s*\\d{4}(-(\\d{4})?)?:", "").strip();
          String marked = words.replaceAll("^mint [A-Z]{1,3}$", "");
          boolean plain = marked.matches("[a-z0-9$%.,&'/ -]*");
          if (!plain || (words.isEmpty() && !phrase.isBlank())) {
            odd.add(row.get("id") + " " + column + ": " + phrase);
          }
        }
      }
    }
    assertThat(odd).isEmpty();
  }

  @Test
  void everySourceKeyStandsInTheListOfSources() {
    Set<String> known =
        ResourceTable.rowsOf("sources-americas.csv", "sources-eurasia.csv").stream()
            .map(row -> row.get("key"))
            .collect(Collectors.toSet());
    Set<String> unknown = new TreeSet<>();
    for (CoinStandard standard : catalogue.all()) {
      standard.evidence().sources().stream()
          .filter(key -> !known.contains(key))
          .forEach(key -> unknown.add(key + " in " + standard.id()));
    }
    assertThat(unknown).isEmpty();
  }

  @Test
  void certaintyAgreesWithTheNumberOfSources() {
    List<String> wrong = new ArrayList<>();
    for (CoinStandard standard : catalogue.all()) {
      int sources = standard.evidence().sources().size();
      boolean fits =
          switch (standard.evidence().certainty()) {
            case TWO_SOURCES -> sources >= 2;
            case SOURCED -> sources >= 1;
            case MEMORY -> true;
            case OWN -> false;
          };
      if (!fits) {
        wrong.add(standard.id());
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void fiveCentsOf1942AreToldApartByTheMintMark() {
    Mints copperNickel = mints("us-nickel-1938-1942-jefferson");
    Mints war = mints("us-nickel-1942-1945-war");
    assertThat(copperNickel.allow("", 1942)).isTrue();
    assertThat(copperNickel.allow("D", 1942)).isTrue();
    assertThat(copperNickel.allow("P", 1942)).isFalse();
    assertThat(copperNickel.allow("S", 1942)).isFalse();
    assertThat(copperNickel.allow("S", 1941)).isTrue();
    assertThat(copperNickel.allow("P", 1941)).isTrue();
    assertThat(war.allow("P", 1942)).isTrue();
    assertThat(war.allow("S", 1942)).isTrue();
    assertThat(war.allow("D", 1942)).isFalse();
    assertThat(war.allow("", 1942)).isFalse();
    assertThat(war.allow("D", 1943)).isTrue();
  }

  private Mints mints(String id) {
    return catalogue.byId(id).orElseThrow().issue().mints();
  }
}
