package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import fineweight.workbook.office.AddInOffice;
import fineweight.workbook.validity.WorkbookValidator;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the melt column holds: live formulas, values, or calls of the add-in. */
class AddInFormulasTest {
  @TempDir Path folder;

  private Path starter(String name) {
    Path file = folder.resolve(name);
    assertThat(CommandRun.of("starter", file).code()).isZero();
    return file;
  }

  private static void refresh(Path file, String... more) {
    CommandRun run = CommandRun.refresh(file, more);
    assertThat(run.code()).as(run.err()).isZero();
  }

  /** The column's place by its heading. */
  private static int column(Sheet sheet, String heading) {
    for (Cell cell : sheet.getRow(0)) {
      if (cell.toString().equals(heading)) {
        return cell.getColumnIndex();
      }
    }
    throw new AssertionError("no column " + heading);
  }

  private static Map<Integer, BigDecimal> figures(Path file, String heading) throws IOException {
    Map<Integer, BigDecimal> figures = new TreeMap<>();
    try (Workbook workbook = WorkbookFactory.create(file.toFile(), null, true)) {
      Sheet sheet = workbook.getSheet("Inventory");
      int column = column(sheet, heading);
      for (Row row : sheet) {
        Cell cell = row.getCell(column);
        boolean formula = cell != null && cell.getCellType() == CellType.FORMULA;
        if (row.getRowNum() > 0
            && cell != null
            && (formula || cell.getCellType() == CellType.NUMERIC)) {
          figures.put(
              row.getRowNum(), BigDecimal.valueOf(cell.getNumericCellValue()).stripTrailingZeros());
        }
      }
    }
    return figures;
  }

  private static List<String> formulas(Path file) throws IOException {
    List<String> formulas = new ArrayList<>();
    try (Workbook workbook = WorkbookFactory.create(file.toFile(), null, true)) {
      Sheet sheet = workbook.getSheet("Inventory");
      int column = column(sheet, "Melt USD");
      for (Row row : sheet) {
        Cell cell = row.getCell(column);
        if (cell != null && cell.getCellType() == CellType.FORMULA) {
          formulas.add(cell.getCellFormula());
        }
      }
    }
    return formulas;
  }

  private static Map<Integer, BigDecimal> figuresOfText(Path csv, String heading)
      throws IOException {
    List<List<String>> rows = new ArrayList<>();
    try (CsvReader<CsvRecord> lines = CsvReader.builder().skipEmptyLines(false).ofCsvRecord(csv)) {
      lines.forEach(line -> rows.add(line.getFields()));
    }
    int column = rows.get(0).indexOf(heading);
    Map<Integer, BigDecimal> figures = new TreeMap<>();
    for (int row = 1; row < rows.size(); row++) {
      String text = rows.get(row).get(column);
      if (!text.isEmpty()) {
        figures.put(row, new BigDecimal(text).stripTrailingZeros());
      }
    }
    return figures;
  }

  @Test
  void theFiguresAreTheSameWhateverTheCellsHold() throws IOException {
    Path live = starter("live.xlsx");
    Path values = starter("values.xlsx");
    Path calls = starter("calls.xlsx");
    refresh(live);
    refresh(values, "--values-only");
    refresh(calls, "--add-in-formulas");
    assertThat(figures(live, "Melt USD")).hasSizeGreaterThan(8);
    assertThat(figures(values, "Melt USD")).isEqualTo(figures(live, "Melt USD"));
    assertThat(figures(calls, "Melt USD")).isEqualTo(figures(live, "Melt USD"));
    assertThat(formulas(values)).isEmpty();
    assertThat(formulas(live)).isNotEmpty().noneMatch(each -> each.contains("FINEWEIGHT."));
    assertThat(formulas(calls))
        .anyMatch(each -> each.startsWith("FINEWEIGHT.MELT("))
        .anyMatch(each -> each.startsWith("ROUND("));
    assertThat(WorkbookValidator.findings(calls)).isEmpty();
    assertThat(CommandRun.refresh(calls, "--add-in-formulas").out())
        .contains("Nothing had to change");
    refresh(calls);
    assertThat(formulas(calls)).isEqualTo(formulas(live));
  }

  @Test
  void theOldFormatTakesThemToo() throws IOException {
    Path file = folder.resolve("coins.xls");
    try (Workbook workbook = new org.apache.poi.hssf.usermodel.HSSFWorkbook()) {
      Sheet sheet = workbook.createSheet("Inventory");
      String[][] cells = {{"Year", "Denomination", "Count"}, {"1964", "half dollar", "2"}};
      for (int row = 0; row < cells.length; row++) {
        for (int column = 0; column < cells[row].length; column++) {
          sheet.getRow(row);
          Row line = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
          line.createCell(column).setCellValue(cells[row][column]);
        }
      }
      try (OutputStream out = Files.newOutputStream(file)) {
        workbook.write(out);
      }
    }
    refresh(file, "--add-in-formulas");
    assertThat(formulas(file)).hasSize(1).allMatch(each -> each.startsWith("FINEWEIGHT.MELT("));
    // Two of 12.5 g, 900 fine, at 30 an ounce of 31.1034768 g: Coinage Act of 1873, section 15.
    assertThat(figures(file, "Melt USD")).containsValue(new BigDecimal("21.7"));
    assertThat(CommandRun.refresh(file, "--add-in-formulas").out())
        .contains("Nothing had to change");
  }

  @Test
  void aTextTableTakesNone() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("coins.csv"), "Year,Denomination,Count\n1964,half dollar,2\n");
    CommandRun run = CommandRun.refresh(file, "--add-in-formulas");
    assertThat(run.code()).isNotZero();
    assertThat(run.err()).contains("holds no formulas", "--add-in-formulas");
    assertThat(Files.readString(file)).doesNotContain("Melt");
  }

  @Test
  void bothChoicesAtOnceAreRefused() {
    Path file = starter("both.xlsx");
    CommandRun run = CommandRun.refresh(file, "--add-in-formulas", "--values-only");
    assertThat(run.code()).isNotZero();
    assertThat(run.err()).contains("--add-in-formulas", "--values-only");
  }

  /**
   * With the add-in the office comes to the library's figures, at the price in the file and at one
   * that is typed over it; without the add-in every figure shows.
   */
  @Test
  void inTheOffice() throws IOException, InterruptedException {
    AddInOffice office = AddInOffice.in(Files.createDirectory(folder.resolve("office")));
    Path calls = starter("calls.xlsx");
    refresh(calls, "--add-in-formulas");
    assertThat(figuresOfText(office.calculated(calls, "Inventory"), "Melt USD"))
        .isEqualTo(figures(calls, "Melt USD"));
    assertThat(figuresOfText(office.shownWithoutAddIn(calls, "Inventory"), "Melt USD"))
        .isEqualTo(figures(calls, "Melt USD"));
    assertThat(figuresOfText(office.shownWithoutAddIn(calls, "Inventory"), "Worth USD"))
        .isEqualTo(figures(calls, "Worth USD"));

    Path dearer = starter("dearer.xlsx");
    assertThat(CommandRun.of("refresh", dearer, "--spot", "XAU=2500", "--spot", "XAG=47.11").code())
        .isZero();
    Path typed = folder.resolve("typed.xlsx");
    try (Workbook workbook = WorkbookFactory.create(Files.newInputStream(calls))) {
      Sheet spot = workbook.getSheet("Fineweight spot");
      for (Row row : spot) {
        if (row.getCell(0) != null && row.getCell(0).toString().equals("silver")) {
          row.getCell(1).setCellValue(47.11);
        }
      }
      try (OutputStream out = Files.newOutputStream(typed)) {
        workbook.write(out);
      }
    }
    Map<Integer, BigDecimal> moved =
        figuresOfText(office.calculated(typed, "Inventory"), "Melt USD");
    assertThat(moved).isEqualTo(figures(dearer, "Melt USD"));
    assertThat(moved).isNotEqualTo(figures(calls, "Melt USD"));
  }
}
