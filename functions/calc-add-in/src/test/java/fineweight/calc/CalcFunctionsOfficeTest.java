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
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The packed extension in a real office. */
class CalcFunctionsOfficeTest {
  private static NormalUserOffice office;
  private static List<Path> written;

  @BeforeAll
  static void install() throws IOException, InterruptedException {
    office = NormalUserOffice.fresh();
    office.install(Path.of(System.getProperty("fineweight.extension")));
    written = new ArrayList<>();
    for (Style style : Style.values()) {
      written.add(
          office.write(
              style + ".fods", CaseSpreadsheet.of(CaseFormula.all(style, Syntax.OPEN_FORMULA))));
    }
  }

  @AfterAll
  static void close() throws IOException {
    if (office != null) {
      office.close();
    }
  }

  @Test
  void everyCaseComesOutAsTheTableSays() throws IOException, InterruptedException {
    check(office.convert("csv", written, "first"));
  }

  @Test
  void everyCaseSurvivesSavingAsXlsx() throws IOException, InterruptedException {
    checkSavedAs("xlsx");
  }

  @Test
  void everyCaseSurvivesSavingAsOds() throws IOException, InterruptedException {
    checkSavedAs("ods");
  }

  @Test
  void everyCaseSurvivesSavingAsXls() throws IOException, InterruptedException {
    checkSavedAs("xls");
  }

  /** One spelling everywhere: a file holds the names that a person types. */
  @Test
  void anXlsxHoldsTheNamesAsTheyAreTyped() throws IOException, InterruptedException {
    Path saved = office.convert("xlsx", written.subList(0, 1), "names").get(0);
    try (ZipFile parts = new ZipFile(saved.toFile());
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

  private static void checkSavedAs(String kind) throws IOException, InterruptedException {
    List<Path> saved = office.convert(kind, written, kind);
    check(office.convert("csv", saved, kind + "-csv"));
  }

  private static void check(List<Path> tables) throws IOException {
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < tables.size(); i++) {
      List<CaseFormula> cases = CaseFormula.all(Style.values()[i], Syntax.OPEN_FORMULA);
      List<List<String>> rows = read(tables.get(i));
      for (CaseFormula one : cases) {
        check(rows, one, wrong);
      }
    }
    assertThat(wrong).isEmpty();
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
