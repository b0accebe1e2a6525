package fineweight.workbook.csv;

import static fineweight.workbook.csv.CsvFiles.column;
import static fineweight.workbook.csv.CsvFiles.columns;
import static fineweight.workbook.csv.CsvFiles.open;
import static fineweight.workbook.csv.CsvFiles.rows;
import static fineweight.workbook.csv.CsvFiles.without;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fineweight.workbook.CellContent;
import fineweight.workbook.Workbook.UsedArea;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import fineweight.workbook.open.CorpusFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Text tables made by others. */
class CsvCorpusTest {
  @TempDir Path folder;

  static Stream<Path> soundTables() throws IOException {
    return Stream.of("workbooks", "museum", "inventories", "hostile")
        .flatMap(CsvCorpusTest::tables)
        .filter(file -> !file.endsWith("unterminated-quote.csv"));
  }

  private static Stream<Path> tables(String folder) {
    try {
      return CorpusFiles.all(folder, ".csv").stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Line by line in the bytes' own terms: the old line, and behind it only what we put there. */
  @ParameterizedTest
  @MethodSource("soundTables")
  void keepsEveryByteOfTheOwner(Path original) throws Exception {
    Path file = CorpusFiles.copy(original, folder);
    CsvWorkbook workbook = open(file);
    UsedArea used = workbook.usedArea("");
    int ours = used.lastColumn() + 1;
    WorkbookEdit edit =
        columns(
            used.lastRow(),
            column(ours, "Ours", row -> new CellContent.Number(new BigDecimal("12345.5"))));

    workbook.save(edit);

    byte[] after = Files.readAllBytes(file);
    assertThat(withoutOurs(after)).isEqualTo(withoutPadding(Files.readAllBytes(original)));
    assertThat(open(file).save(edit).written()).isFalse();
    open(file).save(without(ours));
    assertThat(withoutPadding(Files.readAllBytes(file)))
        .isEqualTo(withoutPadding(Files.readAllBytes(original)));
  }

  private static String withoutOurs(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    return text.replaceAll("[,;\t|]+\"?(Ours|12345[.,]5|12345.5)\"?(?=[\r\n]|$)", "")
        .replaceAll("[,;\t|]+(?=[\r\n]|$)", "");
  }

  /** Without the empty fields that fill a short line. */
  private static String withoutPadding(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1).replaceAll("[,;\t|]+(?=[\r\n]|$)", "");
  }

  @Test
  void readsTheEuropeanExport() throws Exception {
    Path file = CorpusFiles.copy(export(), folder);
    CsvWorkbook workbook = open(file);

    assertThat(Dialect.of(file))
        .isEqualTo(new Dialect(new TextEncoding(Charset.forName("windows-1252"), false), ';', ','));
    assertThat(workbook.usedArea("")).isEqualTo(new UsedArea(77, 9));
    assertThat(rows(workbook))
        .hasSize(77)
        .contains(
            "A2=1 B2=5 Mark Kaiser Wilhelm II C2=Deutschland D2=1908 E2=1 F2=ss G2=27,50 H2=27,70"
                + " I2=1 J2=Preu\u00dfen")
        .anyMatch(row -> row.contains("G3=14,00 \u20ac"));
  }

  @Test
  void fillsTheEuropeanExportWithDecimalCommas() throws Exception {
    Path file = CorpusFiles.copy(export(), folder);
    Charset windows = Charset.forName("windows-1252");
    String[] before = Files.readString(file, windows).split("\r\n", -1);

    open(file)
        .save(
            columns(
                76, column(10, "Ounces", row -> new CellContent.Number(new BigDecimal("0.80")))));

    String[] after = Files.readString(file, windows).split("\r\n", -1);
    assertThat(after).hasSameSizeAs(before);
    assertThat(after[0]).isEqualTo(before[0] + ";Ounces");
    for (int i = 1; i <= 76; i++) {
      assertThat(after[i]).isEqualTo(before[i] + ";0,80");
    }
    assertThat(after[77]).as("the last line, which no row of the edit is").isEqualTo(before[77]);
  }

  private static Path export() {
    return CorpusFiles.folder("inventories").resolve("verzameling-export.csv");
  }

  @Test
  void refusesTheQuoteThatIsNeverClosed() {
    Path file = CorpusFiles.folder("hostile").resolve("unterminated-quote.csv");

    WorkbookRefusal refusal = catchThrowableOfType(WorkbookRefusal.class, () -> open(file));

    assertThat(refusal.kind()).isEqualTo(Kind.DAMAGED);
    assertThat(refusal)
        .hasMessageContaining("unterminated-quote.csv")
        .hasMessageContaining("line 2");
  }

  @Test
  void readsAnOfficesUnicodeText() throws Exception {
    Path file = CorpusFiles.folder("workbooks").resolve("ErrorTypes.txt");

    assertThat(Dialect.of(file))
        .isEqualTo(new Dialect(new TextEncoding(StandardCharsets.UTF_16LE, true), '\t', '.'));
    assertThat(rows(open(file)).get(0)).startsWith("A1=Error B1=Bang C1=Que");
  }
}
