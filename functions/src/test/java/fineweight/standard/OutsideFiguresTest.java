package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.quantity.Mass;
import java.io.StringReader;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The catalogue against figures of statutes, treaties, mint publications and handbooks; the source
 * stands beside each figure in the resource. Most were typed as known from the citations, some from
 * law texts found by search; the cited books were not opened again for it.
 */
class OutsideFiguresTest {
  private static final List<OutsideFigure> FIGURES =
      OutsideFigure.all("outside-figures-americas.csv", "outside-figures-eurasia.csv");

  private static final Map<String, List<SisterGroup>> SISTERS = new HashMap<>();

  static {
    for (SisterGroup group : SisterGroup.all()) {
      for (String id : group.ids()) {
        SISTERS.computeIfAbsent(id, row -> new ArrayList<>()).add(group);
      }
    }
  }

  @Test
  void theCatalogueSaysWhatTheSourcesSay() {
    List<String> wrong = new ArrayList<>();
    for (OutsideFigure figure : FIGURES) {
      assertThat(figure.source()).as(figure.id()).isNotBlank();
      CoinStandard standard =
          Standards.catalogue()
              .byId(figure.id())
              .orElseThrow(() -> new AssertionError("no row " + figure.id()));
      if (!figure.holdsFor(standard)) {
        wrong.add(
            figure + ", but is " + standard.specification() + " with " + standard.fineContent());
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(FIGURES).hasSizeGreaterThan(1000);
  }

  @Test
  void manyIssuersAreChecked() {
    TreeSet<String> issuers =
        FIGURES.stream()
            .map(figure -> Standards.catalogue().byId(figure.id()).orElseThrow().issue().country())
            .collect(Collectors.toCollection(TreeSet::new));
    System.out.println(FIGURES.size() + " outside figures of " + issuers.size() + " issuers");
    assertThat(issuers).hasSizeGreaterThanOrEqualTo(65);
  }

  /**
   * Each digit of mass, fineness and fine mass of each row that rests on a text and that some
   * outside figure speaks of is replaced by each other digit: the changed row is refused, or an
   * outside figure, a sister of the same coinage law or a sum contradicts it.
   */
  @Test
  void noDigitOfACheckedRowCanChangeUnnoticed() {
    Map<String, List<OutsideFigure>> byId =
        FIGURES.stream()
            .filter(OutsideFigure::isOfMetal)
            .collect(Collectors.groupingBy(OutsideFigure::id));
    TreeSet<String> unnoticed = new TreeSet<>();
    int changed = 0;
    int rows = 0;
    for (Map<String, String> row : ResourceTable.catalogue()) {
      List<OutsideFigure> figures = byId.get(row.get("id"));
      if (figures == null || row.get("certainty").equals(Certainty.MEMORY.code())) {
        continue;
      }
      rows++;
      for (String column : List.of("mass_g", "mass_grains", "fine_mass_g", "composition")) {
        for (Map<String, String> other : withOneDigitChanged(row, column)) {
          changed++;
          if (!isNoticed(row, other, figures)) {
            unnoticed.add(row.get("id") + " " + column + " " + other.get(column));
          }
        }
      }
    }
    assertThat(String.join("\n", unnoticed)).isEmpty();
    System.out.println(
        rows + " rows protected: each of " + changed + " changes of a digit is noticed");
    assertThat(rows).isGreaterThan(520);
    assertThat(changed).isGreaterThan(60_000);
  }

  private static List<Map<String, String>> withOneDigitChanged(
      Map<String, String> row, String column) {
    List<Map<String, String>> changed = new ArrayList<>();
    String text = row.get(column);
    for (int i = 0; i < text.length(); i++) {
      for (char digit = '0'; digit <= '9'; digit++) {
        if (Character.isDigit(text.charAt(i)) && text.charAt(i) != digit) {
          Map<String, String> copy = new LinkedHashMap<>(row);
          copy.put(column, text.substring(0, i) + digit + text.substring(i + 1));
          changed.add(copy);
        }
      }
    }
    return changed;
  }

  private static boolean isNoticed(
      Map<String, String> typed, Map<String, String> row, List<OutsideFigure> figures) {
    CoinStandard standard;
    try {
      standard = read(row);
    } catch (StandardFileException refused) {
      return true;
    }
    return figures.stream().anyMatch(figure -> !figure.holdsFor(standard))
        || !CatalogueArithmetic.gramsAreGrainsRounded(row)
        || !CatalogueArithmetic.namesEverything(standard)
        || !CatalogueArithmetic.statedFineMassFits(standard)
        || CatalogueArithmetic.fineMassIsTheProduct(read(typed))
            && !CatalogueArithmetic.fineMassIsTheProduct(standard)
        || SISTERS.getOrDefault(standard.id(), List.of()).stream()
            .anyMatch(group -> !group.outOfProportion(withChanged(standard)).isEmpty());
  }

  private static Function<String, CoinStandard> withChanged(CoinStandard changed) {
    return id -> id.equals(changed.id()) ? changed : Standards.catalogue().byId(id).orElseThrow();
  }

  private static CoinStandard read(Map<String, String> row) {
    String header = String.join(",", StandardFile.COLUMNS);
    String fields =
        StandardFile.COLUMNS.stream()
            .map(column -> '"' + row.get(column).replace("\"", "\"\"") + '"')
            .collect(Collectors.joining(","));
    return StandardFile.read("row.csv", new StringReader(header + "\n" + fields + "\n")).get(0);
  }

  /** One fact in two directions: the law's grains and the grams that another text prints. */
  @Test
  void grainsOfTheLawAndPublishedGramsAgreeWithinTheRounding() {
    Map<String, List<OutsideFigure>> grams =
        FIGURES.stream()
            .filter(figure -> figure.quantity().equals("gross_g"))
            .filter(figure -> figure.expected().indexOf('/') < 0)
            .collect(Collectors.groupingBy(OutsideFigure::id));
    List<String> apart = new ArrayList<>();
    int pairs = 0;
    for (OutsideFigure law : FIGURES) {
      if (law.quantity().equals("gross_gr")) {
        BigDecimal exact = Mass.ofGrains(new BigDecimal(law.expected())).grams();
        for (OutsideFigure printed : grams.getOrDefault(law.id(), List.of())) {
          pairs++;
          BigDecimal figure = new BigDecimal(printed.expected());
          BigDecimal rounding = new BigDecimal("0.5").movePointLeft(figure.scale());
          if (exact.subtract(figure).abs().compareTo(rounding) > 0) {
            apart.add(law + ", but " + printed);
          }
        }
      }
    }
    System.out.println(pairs + " coins by the grains of a law and by published grams");
    assertThat(apart).isEmpty();
    assertThat(pairs).isGreaterThan(100);
  }

  /** Worked by hand: 12.5 g of 900 fine is 11.25 g, over 31.1034768 g an ounce 0.36169 ozt. */
  @Test
  void halfDollarOf1964() {
    CoinStandard half = Standards.catalogue().byId("us-half-1964-kennedy").orElseThrow();
    assertThat(half.fineContent().of(fineweight.metal.Metal.SILVER).grams())
        .isEqualByComparingTo(new BigDecimal("11.25"));
  }
}
