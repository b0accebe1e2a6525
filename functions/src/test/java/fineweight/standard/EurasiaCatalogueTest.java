package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class EurasiaCatalogueTest {
  private final Standards standards = EurasiaFiles.standards();

  @Test
  void everyRowOfEveryFileCanBeRead() {
    assertThat(standards.all()).hasSizeGreaterThan(800);
  }

  @Test
  void everyIssuerStandsInTheFileOfItsName() {
    Set<String> files =
        standards.all().stream()
            .map(s -> s.issue().country().toLowerCase(Locale.ROOT).replace(' ', '-') + ".csv")
            .collect(Collectors.toSet());
    assertThat(EurasiaFiles.names()).containsExactlyInAnyOrderElementsOf(files);
  }

  @Test
  void everySourceKeyIsExplained() {
    Set<String> explained =
        EurasiaFiles.rows("sources-eurasia.csv").stream()
            .map(row -> row.getField("key"))
            .collect(Collectors.toSet());
    for (CoinStandard standard : standards.all()) {
      assertThat(explained).as(standard.id()).containsAll(standard.evidence().sources());
    }
  }

  @Test
  void everyQuestionNamesStandardsAndHasAnAnswerForEach() {
    for (NamedCsvRecord row : EurasiaFiles.rows("questions-eurasia.csv")) {
      String[] ids = row.getField("standards").split(" ");
      assertThat(ids).allMatch(id -> standards.byId(id).isPresent());
      assertThat(row.getField("answers").split("\\|")).as(row.toString()).hasSameSizeAs(ids);
      assertThat(row.getField("question")).endsWith("?");
    }
  }
}
