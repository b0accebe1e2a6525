package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.metal.Metal;
import fineweight.quantity.Fineness;
import fineweight.quantity.Mass;
import fineweight.quantity.MassUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The rows of the catalogue against one another and against arithmetic. */
class CatalogueTest {
  private static final BigDecimal ONE_PER_MILLE = BigDecimal.ONE;
  private static final BigDecimal ROUNDING = new BigDecimal("0.0006");

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
      assertThat(issuers.iterator().next().toLowerCase(java.util.Locale.ROOT).replace(' ', '-'))
          .isEqualTo(file.replace(".csv", ""));
    }
  }

  @Test
  void compositionsNameEverythingButAThousandth() {
    List<String> open = new ArrayList<>();
    for (CoinStandard standard : catalogue.all()) {
      BigDecimal unnamed = standard.specification().composition().unnamedPerMille();
      if (unnamed.compareTo(ONE_PER_MILLE) > 0) {
        open.add(standard.id() + " leaves " + unnamed + " per mille open");
      }
    }
    assertThat(open).isEmpty();
  }

  /** Mint tolerance and rounding make up 0.06 %; anything more must be explained in the note. */
  @Test
  void statedFineMassAgreesWithGrossMassTimesFineness() {
    List<String> wrong = new ArrayList<>();
    for (CoinStandard standard : catalogue.all()) {
      Specification specification = standard.specification();
      Optional<Mass> stated = specification.statedFineMass();
      if (stated.isEmpty() || specification.grossMass().isEmpty()) {
        continue;
      }
      Metal main = specification.composition().mainPreciousMetal().orElseThrow();
      Fineness fineness = specification.composition().fineness(main).orElseThrow();
      BigDecimal product = fineness.of(specification.grossMass().get()).grams();
      BigDecimal share =
          product
              .subtract(stated.get().grams())
              .abs()
              .divide(stated.get().grams(), MathContext.DECIMAL64);
      boolean ounce = isFractionOfAnOunce(stated.get());
      boolean explained =
          standard.evidence().note().toLowerCase(java.util.Locale.ROOT).contains("fine");
      if (share.compareTo(ROUNDING) > 0
          && !(explained || ounce && share.compareTo(new BigDecimal("0.0011")) < 0)) {
        wrong.add(standard.id() + ": states " + stated.get() + ", product " + product + " g");
      }
    }
    assertThat(wrong).isEmpty();
  }

  private static boolean isFractionOfAnOunce(Mass mass) {
    return mass.in(MassUnit.TROY_OUNCE).multiply(new BigDecimal("60")).stripTrailingZeros().scale()
        <= 0;
  }

  /** Grains are the law's figure; the grams beside them are the same figure rounded. */
  @Test
  void gramsAreTheGrainsRounded() {
    List<String> wrong = new ArrayList<>();
    for (Map<String, String> row : ResourceTable.catalogue()) {
      if (row.get("mass_g").isEmpty() || row.get("mass_grains").isEmpty()) {
        continue;
      }
      BigDecimal grams = new BigDecimal(row.get("mass_g"));
      BigDecimal exact = Mass.ofGrains(new BigDecimal(row.get("mass_grains"))).grams();
      BigDecimal unit = BigDecimal.ONE.movePointLeft(Math.min(grams.scale(), 3));
      if (grams.subtract(exact).abs().compareTo(unit.multiply(new BigDecimal("0.75"))) > 0) {
        wrong.add(row.get("id") + ": " + grams + " g, but " + exact + " g by the grains");
      }
    }
    assertThat(wrong).isEmpty();
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
