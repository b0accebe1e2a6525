package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
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
    assertThat(FIGURES).hasSizeGreaterThan(700);
  }

  /**
   * Each digit of mass, fineness and fine mass of a row whose mass is checked exactly is raised by
   * one: the changed row is refused, or an outside figure or a sum contradicts it.
   */
  @Test
  void noDigitOfACheckedRowCanChangeUnnoticed() {
    Map<String, List<OutsideFigure>> byId =
        FIGURES.stream().collect(Collectors.groupingBy(OutsideFigure::id));
    TreeSet<String> unnoticed = new TreeSet<>();
    int changed = 0;
    for (Map<String, String> row : ResourceTable.catalogue()) {
      List<OutsideFigure> figures = byId.getOrDefault(row.get("id"), List.of());
      boolean massIsExact =
          figures.stream()
              .anyMatch(figure -> figure.quantity().startsWith("gross_g") && figure.isExact());
      if (!massIsExact) {
        continue;
      }
      for (String column : List.of("mass_g", "mass_grains", "fine_mass_g", "composition")) {
        for (Map<String, String> other : withOneDigitRaised(row, column)) {
          changed++;
          if (!isNoticed(other, figures)) {
            unnoticed.add(row.get("id") + " " + column + " " + other.get(column));
          }
        }
      }
    }
    assertThat(unnoticed).isEmpty();
    assertThat(changed).isGreaterThan(2000);
  }

  private static List<Map<String, String>> withOneDigitRaised(
      Map<String, String> row, String column) {
    List<Map<String, String>> changed = new ArrayList<>();
    String text = row.get(column);
    for (int i = 0; i < text.length(); i++) {
      char digit = text.charAt(i);
      if (Character.isDigit(digit)) {
        Map<String, String> copy = new LinkedHashMap<>(row);
        String raised = text.substring(0, i) + (digit - '0' + 1) % 10 + text.substring(i + 1);
        copy.put(column, raised);
        changed.add(copy);
      }
    }
    return changed;
  }

  private static boolean isNoticed(Map<String, String> row, List<OutsideFigure> figures) {
    CoinStandard standard;
    try {
      standard = read(row);
    } catch (StandardFileException refused) {
      return true;
    }
    return figures.stream().anyMatch(figure -> !figure.holdsFor(standard))
        || !CatalogueArithmetic.gramsAreGrainsRounded(row)
        || !CatalogueArithmetic.namesEverything(standard)
        || !CatalogueArithmetic.statedFineMassFits(standard);
  }

  private static CoinStandard read(Map<String, String> row) {
    String header = String.join(",", StandardFile.COLUMNS);
    String fields =
        StandardFile.COLUMNS.stream()
            .map(column -> '"' + row.get(column).replace("\"", "\"\"") + '"')
            .collect(Collectors.joining(","));
    return StandardFile.read("row.csv", new StringReader(header + "\n" + fields + "\n")).get(0);
  }

  /** Worked by hand: 12.5 g of 900 fine is 11.25 g, over 31.1034768 g an ounce 0.36169 ozt. */
  @Test
  void halfDollarOf1964() {
    CoinStandard half = Standards.catalogue().byId("us-half-1964-kennedy").orElseThrow();
    assertThat(half.fineContent().of(fineweight.metal.Metal.SILVER).grams())
        .isEqualByComparingTo(new BigDecimal("11.25"));
  }
}
