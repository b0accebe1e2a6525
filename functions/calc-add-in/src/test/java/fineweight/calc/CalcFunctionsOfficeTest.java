package fineweight.calc;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import fineweight.sheet.SheetFunctions;
import fineweight.sheet.cases.CaseFormula;
import fineweight.sheet.cases.CaseFormula.Style;
import fineweight.sheet.cases.CaseFormula.Syntax;
import fineweight.sheet.function.SheetFunction;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The packed extension in a real office. */
class CalcFunctionsOfficeTest {
  private static NormalUserOffice office;
  private static final Map<String, Path> TABLES = new HashMap<>();
  private static Path savedAsXlsx;

  /** As few starts of the office as can be: each takes seconds. */
  @BeforeAll
  static void install() throws IOException, InterruptedException {
    office = NormalUserOffice.fresh();
    office.install(Path.of(System.getProperty("fineweight.extension")));
    List<Path> written = new ArrayList<>();
    for (Style style : Style.values()) {
      written.add(
          office.write(
              "fods-" + style + ".fods",
              CaseSpreadsheet.of(CaseFormula.all(style, Syntax.OPEN_FORMULA))));
    }
    List<Path> all = new ArrayList<>(written);
    for (String kind : List.of("xlsx", "ods", "xls")) {
      for (Path saved : office.convert(kind, written, kind)) {
        String name = saved.getFileName().toString().replace("fods-", kind + "-");
        all.add(Files.move(saved, saved.resolveSibling(name)));
      }
    }
    office.convert("csv", all, "csv").forEach(table -> TABLES.put(stem(table), table));
    savedAsXlsx =
        all.stream().filter(file -> stem(file).startsWith("xlsx-TYPED")).findFirst().get();
  }

  private static String stem(Path file) {
    String name = file.getFileName().toString();
    return name.substring(0, name.lastIndexOf('.'));
  }

  @AfterAll
  static void close() throws IOException {
    if (office != null) {
      office.close();
    }
  }

  /** Calculated by the office from the formulas, then saved in each kind and opened again. */
  @ParameterizedTest
  @CsvSource({
    "fods,TYPED", "fods,IN_CELLS", "xlsx,TYPED", "xlsx,IN_CELLS",
    "ods,TYPED", "ods,IN_CELLS", "xls,TYPED", "xls,IN_CELLS"
  })
  void everyCaseComesOutAsTheTableSays(String kind, Style style) throws IOException {
    List<List<String>> rows = read(TABLES.get(kind + "-" + style + "-cases"));
    List<String> wrong = new ArrayList<>();
    for (CaseFormula one : CaseFormula.all(style, Syntax.OPEN_FORMULA)) {
      check(rows, one, wrong);
    }
    assertThat(wrong).isEmpty();
  }

  /** One spelling everywhere: a file holds the names that a person types. */
  @Test
  void anXlsxHoldsTheNamesAsTheyAreTyped() throws IOException {
    try (ZipFile parts = new ZipFile(savedAsXlsx.toFile());
        InputStream sheet = parts.getInputStream(parts.getEntry("xl/worksheets/sheet1.xml"))) {
      String xml = new String(sheet.readAllBytes(), StandardCharsets.UTF_8);
      for (SheetFunction function : SheetFunctions.all()) {
        assertThat(xml).contains(">" + function.name() + "(");
      }
    }
  }

  /** Without the extension no case can pass by chance, and no cell looks like an answer. */
  @Test
  void withoutTheExtensionTheNamesAreNotKnown() throws IOException, InterruptedException {
    try (NormalUserOffice plain = NormalUserOffice.fresh()) {
      List<CaseFormula> cases = CaseFormula.all(Style.TYPED, Syntax.OPEN_FORMULA);
      Path file = plain.write("plain.fods", CaseSpreadsheet.of(cases));
      List<List<String>> rows = read(plain.convert("csv", List.of(file), "plain").get(0));
      for (CaseFormula one : cases) {
        assertThat(rows.get(one.row()).get(0)).as(one.formula()).isEqualTo("#NAME?");
      }
    }
  }

  private static void check(List<List<String>> rows, CaseFormula one, List<String> wrong) {
    for (int down = 0; down < one.one().expected().cells().size(); down++) {
      int row = one.row() + down;
      String shown = row < rows.size() ? rows.get(row).get(0) : "";
      if (!one.one().expected().fits(down, shown)) {
        wrong.add(one.one() + " as =" + one.formula() + " came to " + shown);
      }
    }
  }

  private static List<List<String>> read(Path table) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    try (CsvReader<CsvRecord> lines =
        CsvReader.builder().skipEmptyLines(false).ofCsvRecord(table)) {
      lines.forEach(line -> rows.add(line.getFields()));
    }
    return rows;
  }
}
