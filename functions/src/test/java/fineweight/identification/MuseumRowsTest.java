package fineweight.identification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.standard.CoinStandard;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Catalogue records as museums word them, and masses that others weighed. */
class MuseumRowsTest {
  /** The catalogue has no British copper penny. */
  private static final List<String> NOT_LISTED = List.of("none");

  /** What the records that are no ancient coins show, by their own pictures and words. */
  private static final Map<String, List<String>> COINS =
      Map.ofEntries(
          Map.entry("mv_52351", List.of("au-threepence-1947-1964-500")),
          Map.entry("mv_57624", List.of("gb-crown-1818-1822-1844-1845-1847-1887-1900-1902-925")),
          Map.entry("mv_58891", NOT_LISTED),
          Map.entry("mv_63180", List.of("au-half-sovereign-sydney-1855-1870-917")),
          Map.entry("mv_75708", List.of("au-sovereign-sydney-1855-1870-917")),
          Map.entry("mv_80839", NOT_LISTED),
          Map.entry("nmah_1075512", List.of("us-gold-10-1795-1804")),
          Map.entry("nmah_1075522", List.of("us-gold-5-1795-1829")),
          Map.entry("nmah_1077666", List.of("us-gold-5-1837-1838-classic")),
          Map.entry("nmah_1079251", List.of("us-gold-20-1850-1907-coronet")),
          Map.entry("nmah_1081976", List.of("us-dollar-1840-1873-seated")),
          Map.entry("nmah_1090017", List.of("us-gold-20-1907-1933-stgaudens")),
          Map.entry("nmah_1090309", List.of("us-gold-20-1907-1933-stgaudens")),
          Map.entry("nmah_1111342", List.of("spam-8r-bust-1786-1825")));

  @Test
  void nothingIsGuessedForAncientCoins() throws IOException {
    for (NamedCsvRecord row : rows("museum-coins.csv")) {
      String date = row.getField("date_text");
      if (date.contains("B.C.") || date.contains("A.D.")) {
        Answered got = Answered.to(museumFields(row));
        assertThat(got.kind()).as(row.getField("title") + ": " + got.said()).isEqualTo("none");
      }
    }
  }

  @Test
  void noRecordGetsAnotherStandardsMetal() throws IOException {
    Map<String, Integer> counts = new TreeMap<>();
    List<String> wrong = new ArrayList<>();
    for (NamedCsvRecord row : rows("museum-coins.csv")) {
      if (row.getField("date_text").contains(".")) {
        continue;
      }
      Answered got = Answered.to(museumFields(row));
      counts.merge(got.kind(), 1, Integer::sum);
      List<String> wanted =
          row.getField("title").startsWith("20 Dollars")
              ? List.of("us-gold-20-1850-1907-coronet", "us-gold-20-1907-1933-stgaudens")
              : COINS.getOrDefault(row.getField("record_id"), List.of());
      boolean answered = got.kind().equals("one") || got.kind().equals("base");
      if (answered && !wanted.isEmpty() && !isOneOf(got, wanted)) {
        wrong.add(row.getField("title") + row.getField("brief") + ": " + got.said());
      }
      if (!answered) {
        System.out.println("museum: " + row.getField("title") + " " + got.said());
      }
    }
    System.out.println("museum records that are no ancient coins: " + counts);
    assertThat(wrong).isEmpty();
    assertThat(counts.getOrDefault("one", 0)).isGreaterThanOrEqualTo(18);
  }

  private static boolean isOneOf(Answered got, List<String> wanted) {
    return got.standards().stream().map(CoinStandard::id).anyMatch(wanted::contains);
  }

  @Test
  void measuredDimesAreTheCoinsOfTheirDate() throws IOException {
    List<BigDecimal> differences = new ArrayList<>();
    int flagged = 0;
    for (NamedCsvRecord row : rows("measured-dimes.csv")) {
      String measured = row.getField("weight_g_measured");
      Answered got =
          Answered.to(
              List.of(
                  new Field(FieldRole.DESCRIPTION, row.getField("coin")),
                  new Field(FieldRole.YEAR, row.getField("year")),
                  new Field(FieldRole.MASS, measured)));
      assertThat(got.standards().stream().map(CoinStandard::id))
          .as(row.getField("row_id") + ": " + got.said())
          .containsExactly("us-dime-1965-2026-clad");
      differences.add(new BigDecimal(measured).subtract(new BigDecimal("2.268")));
      flagged += got.isFlagged() ? 1 : 0;
    }
    differences.sort(BigDecimal::compareTo);
    BigDecimal sum = differences.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    System.out.println(
        "measured dimes: "
            + differences.size()
            + ", against 2.268 g: least "
            + differences.get(0)
            + ", middle "
            + differences.get(differences.size() / 2)
            + ", most "
            + differences.get(differences.size() - 1)
            + ", mean "
            + sum.divide(BigDecimal.valueOf(differences.size()), 4, RoundingMode.HALF_UP)
            + ", flagged "
            + flagged);
    assertThat(flagged).isZero();
  }

  @Test
  void coinsFromAChangeBinHoldNoPreciousMetal() throws IOException {
    for (NamedCsvRecord row : rows("change-bin.csv")) {
      Answered got =
          Answered.to(
              List.of(
                  new Field(FieldRole.COUNTRY, "USA"),
                  new Field(FieldRole.DENOMINATION, row.getField("coin")),
                  new Field(FieldRole.YEAR, row.getField("year"))));
      // No quarter bears the date 1975: that row is an error of its owner.
      boolean noSuch =
          row.getField("coin").equals("quarter") && row.getField("year").equals("1975");
      assertThat(got.kind())
          .as(row.getField("row_id") + ": " + got.said())
          .isEqualTo(noSuch ? "none" : "base");
    }
  }

  private static List<Field> museumFields(NamedCsvRecord row) {
    List<Field> fields = new ArrayList<>();
    String title = row.getField("title");
    add(fields, FieldRole.DESCRIPTION, title.isBlank() ? row.getField("brief") : title);
    add(fields, FieldRole.NOTES, title.isBlank() ? "" : row.getField("brief"));
    add(fields, FieldRole.YEAR, row.getField("date_text"));
    add(fields, FieldRole.MINT, row.getField("mint_text"));
    add(fields, FieldRole.METAL, row.getField("material_text"));
    add(fields, FieldRole.MASS, row.getField("weight_g_read"));
    return fields;
  }

  private static void add(List<Field> fields, FieldRole role, String text) {
    if (!text.isBlank()) {
      fields.add(new Field(role, text));
    }
  }

  private static List<NamedCsvRecord> rows(String file) throws IOException {
    Path path =
        Path.of(System.getProperty("fineweight.shared", "../shared"), "corpus/museum", file);
    assumeTrue(Files.exists(path), "no " + file + " beside the checkout: skipped");
    try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(path)) {
      return csv.stream().toList();
    }
  }
}
