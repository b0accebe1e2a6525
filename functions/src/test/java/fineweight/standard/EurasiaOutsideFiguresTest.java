package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fineweight.metal.Metal;
import fineweight.quantity.Fineness;
import fineweight.quantity.Mass;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Figures of conventions, coinage laws, mints and encyclopedias against the catalogue. They were
 * typed by hand as known from the citations beside them; the texts were not opened again for it.
 */
class EurasiaOutsideFiguresTest {
  private static final Standards STANDARDS = EurasiaFiles.standards();

  static List<NamedCsvRecord> figures() {
    return EurasiaFiles.rows("outside-eurasia.csv");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("figures")
  void theCatalogueSaysWhatThePublishedTextSays(NamedCsvRecord figure) {
    CoinStandard standard = STANDARDS.byId(figure.getField("id")).orElseThrow();
    BigDecimal expected = new BigDecimal(figure.getField("expected"));
    BigDecimal ours = value(standard, figure.getField("field"));
    assertThat(ours.setScale(expected.scale(), RoundingMode.HALF_UP))
        .as(standard.id() + ", " + figure.getField("source"))
        .isEqualByComparingTo(expected);
  }

  @Test
  void manyIssuersAreChecked() {
    Set<String> issuers =
        figures().stream()
            .map(figure -> STANDARDS.byId(figure.getField("id")).orElseThrow().issue().country())
            .collect(Collectors.toSet());
    assertThat(figures()).hasSizeGreaterThanOrEqualTo(100);
    assertThat(issuers).hasSizeGreaterThanOrEqualTo(25);
    assertThat(figures()).noneMatch(figure -> figure.getField("source").isBlank());
  }

  private static BigDecimal value(CoinStandard standard, String field) {
    Specification specification = standard.specification();
    return switch (field) {
      case "mass_g" -> specification.grossMass().map(Mass::grams).orElseThrow();
      case "diameter_mm" -> specification.diameterMillimetres().orElseThrow();
      case "fine_g" ->
          standard
              .fineContent()
              .of(specification.composition().mainPreciousMetal().orElseThrow())
              .grams();
      default ->
          Metal.ofCode(field)
              .flatMap(specification.composition()::fineness)
              .map(Fineness::perMille)
              .orElseThrow();
    };
  }
}
