package fineweight.identification;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.standard.CoinStandard;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Catalogue records as museums word them, with what each coin is. */
final class MuseumRows {
  /** The catalogue has no British copper penny and no pattern. */
  private static final List<String> NOT_LISTED = List.of("none");

  /** What the records that are no ancient coins show, by their own pictures and words. */
  private static final Map<String, List<String>> COINS =
      Map.ofEntries(
          Map.entry("mv_52351", List.of("au-threepence-1947-1964-500")),
          Map.entry("mv_57624", List.of("gb-crown-1818-1822-1844-1845-1847-1887-1900-1902-925")),
          Map.entry("mv_58891", NOT_LISTED),
          Map.entry("mv_63180", List.of("au-half-sovereign-sydney-1855-1870-917")),
          Map.entry("mv_76087", NOT_LISTED),
          Map.entry("mv_75708", List.of("au-sovereign-sydney-1855-1870-917")),
          Map.entry("mv_80839", NOT_LISTED),
          Map.entry("nmah_1100300", NOT_LISTED),
          Map.entry("nmah_1075512", List.of("us-gold-10-1795-1804")),
          Map.entry("nmah_1075522", List.of("us-gold-5-1795-1829")),
          Map.entry("nmah_1077666", List.of("us-gold-5-1837-1838-classic")),
          Map.entry("nmah_1079251", List.of("us-gold-20-1850-1907-coronet")),
          Map.entry("nmah_1081976", List.of("us-dollar-1840-1873-seated")),
          Map.entry("nmah_1090017", List.of("us-gold-20-1907-1933-stgaudens")),
          Map.entry("nmah_1090309", List.of("us-gold-20-1907-1933-stgaudens")),
          Map.entry("nmah_1111342", List.of("spam-8r-bust-1786-1825")));

  /** How an answer to a record compares with what the coin is. */
  enum Outcome {
    RIGHT,
    /** A question, or no answer where the catalogue has one. */
    ASKED,
    WRONG
  }

  private MuseumRows() {}

  /**
   * A coin that the catalogue does not list must not get precious metal without a warning; an
   * ancient one must get none.
   */
  static Outcome judge(NamedCsvRecord row) {
    Answered got = Answered.to(fields(row));
    List<String> wanted = wanted(row);
    boolean metal = got.kind().equals("one");
    if (got.kind().equals("ask")) {
      return Outcome.ASKED;
    }
    if (wanted.equals(NOT_LISTED)) {
      return metal && (isAncient(row) || !got.isFlagged()) ? Outcome.WRONG : Outcome.RIGHT;
    }
    if (got.kind().equals("none")) {
      return Outcome.ASKED;
    }
    boolean isThat = got.standards().stream().map(CoinStandard::id).anyMatch(wanted::contains);
    return isThat ? Outcome.RIGHT : Outcome.WRONG;
  }

  static boolean isAncient(NamedCsvRecord row) {
    return row.getField("date_text").contains("B.C.") || row.getField("date_text").contains("A.D.");
  }

  private static List<String> wanted(NamedCsvRecord row) {
    if (isAncient(row)) {
      return NOT_LISTED;
    }
    String title = row.getField("title");
    if (title.startsWith("20 Dollars")) {
      return List.of("us-gold-20-1850-1907-coronet", "us-gold-20-1907-1933-stgaudens");
    }
    if (title.startsWith("2 1/2 Dollars, Panama")) {
      return List.of("us-com-gold-250-1915-1926");
    }
    return row.getField("brief").startsWith("One (1) pond")
        ? List.of("zar-pond-1892-1902-917")
        : COINS.get(row.getField("record_id"));
  }

  static List<Field> fields(NamedCsvRecord row) {
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

  /** The rows of a file; without the corpus the test is skipped. */
  static List<NamedCsvRecord> of(String file) throws IOException {
    Path path =
        Path.of(System.getProperty("fineweight.shared", "../shared"), "corpus/museum", file);
    assumeTrue(Files.exists(path), "no " + file + " beside the checkout: skipped");
    try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(path)) {
      return csv.stream().toList();
    }
  }
}
