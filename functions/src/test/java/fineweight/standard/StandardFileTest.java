package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.metal.Metal;
import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class StandardFileTest {
  @Test
  void readsARow() {
    CoinStandard standard = read(good()).get(0);
    assertThat(standard.id()).isEqualTo("xx-crown");
    assertThat(standard.issue().denominations()).containsExactly("crown", "5 shillings");
    assertThat(standard.issue().years().contains(1951)).isFalse();
    assertThat(standard.fineContent().of(Metal.SILVER).grams()).isEqualByComparingTo("14.14");
    assertThat(standard.specification().magnetic()).contains(false);
    assertThat(standard.evidence().sources()).containsExactly("LAW", "BOOK");
  }

  @Test
  void columnsMayStandInAnyOrderAndOthersBeside() {
    Map<String, String> row = new LinkedHashMap<>();
    row.put("remark of the owner", "x");
    List<String> names = new java.util.ArrayList<>(good().keySet());
    java.util.Collections.reverse(names);
    names.forEach(name -> row.put(name, good().get(name)));
    assertThat(read(row)).isEqualTo(read(good()));
  }

  /** A grain is exactly 64.79891 mg (the international yard and pound agreement of 1959). */
  @Test
  void grainsCountBeforeGrams() {
    Map<String, String> row = with("mass_g", "6.48");
    row.put("mass_grains", "100");
    row.put("fine_mass_g", "");
    assertThat(read(row).get(0).specification().grossMass().orElseThrow().grams())
        .isEqualByComparingTo("6.479891");
  }

  @Test
  void aBadFieldIsNamedWithFileLineAndColumn() {
    for (Map.Entry<String, String> bad :
        Map.ofEntries(
                Map.entry("id", "xx crown"),
                Map.entry("country", ""),
                Map.entry("denomination", ""),
                Map.entry("face_value", "a lot"),
                Map.entry("years", "about 1950"),
                Map.entry("mints", "S proof"),
                Map.entry("only_if", ";"),
                Map.entry("tells", "early: round"),
                Map.entry("composition", "Ag 900; Cu 200"),
                Map.entry("mass_g", "28,28"),
                Map.entry("mass_grains", "500"),
                Map.entry("fine_mass_g", "29"),
                Map.entry("diameter_mm", "wide"),
                Map.entry("magnetic", "perhaps"),
                Map.entry("source", ""),
                Map.entry("certainty", "sure"))
            .entrySet()) {
      assertThatThrownBy(() -> read(with(bad.getKey(), bad.getValue())))
          .as(bad.toString())
          .isInstanceOf(StandardFileException.class)
          .hasMessageContaining("own.csv")
          .hasMessageContaining("2")
          .hasMessageContaining(bad.getKey());
    }
  }

  @Test
  void aMissingColumnAndAnEmptyFileAreNamed() {
    Map<String, String> row = good();
    row.remove("tells");
    assertThatThrownBy(() -> read(row))
        .isInstanceOf(StandardFileException.class)
        .hasMessageContaining("tells");
    assertThatThrownBy(() -> StandardFile.read("own.csv", new StringReader("")))
        .isInstanceOf(StandardFileException.class)
        .hasMessageContaining("own.csv");
  }

  @Test
  void aShortRowIsRefusedAndABlankLineIsNot() {
    String header = String.join(",", good().keySet());
    assertThatThrownBy(
            () -> StandardFile.read("own.csv", new StringReader(header + "\nxx-crown,XX\n")))
        .isInstanceOf(StandardFileException.class);
    assertThat(StandardFile.read("own.csv", new StringReader(header + "\n\n"))).isEmpty();
  }

  private static Map<String, String> good() {
    Map<String, String> row = new LinkedHashMap<>();
    StandardFile.COLUMNS.forEach(column -> row.put(column, ""));
    row.put("id", "xx-crown");
    row.put("country", "XX");
    row.put("denomination", "crown; 5 shillings");
    row.put("face_value", "0.25");
    row.put("years", "1947-1950;1953");
    row.put("composition", "Ag 500; Cu 500");
    row.put("mass_g", "28.28");
    row.put("fine_mass_g", "14.14");
    row.put("magnetic", "no");
    row.put("source", "LAW; BOOK");
    row.put("certainty", "two-sources");
    return row;
  }

  private static Map<String, String> with(String column, String value) {
    Map<String, String> row = good();
    row.put(column, value);
    return row;
  }

  private static List<CoinStandard> read(Map<String, String> row) {
    String fields =
        row.values().stream()
            .map(value -> '"' + value.replace("\"", "\"\"") + '"')
            .collect(Collectors.joining(","));
    return StandardFile.read(
        "own.csv", new StringReader(String.join(",", row.keySet()) + "\n" + fields + "\n"));
  }
}
