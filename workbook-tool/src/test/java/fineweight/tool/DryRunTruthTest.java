package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.template.StarterWorkbook;
import fineweight.workbook.corpus.SharedFiles;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.ss.util.CellReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the dry run lists as before and after stands so in the file, read by Apache POI. */
class DryRunTruthTest {
  private static final Pattern LINE =
      Pattern.compile(
          "(?s)(.+)!([A-Z]{1,3}[0-9]{1,7}): (\\(empty\\)|\".*\") -> (\\(empty\\)|\".*\")");
  private static final MathContext OFFICE = new MathContext(15);

  @TempDir Path folder;

  @Test
  void theStarterFilledAndRepriced() throws Exception {
    Path file = folder.resolve("starter.xlsx");
    try (OutputStream out = Files.newOutputStream(file)) {
      StarterWorkbook.withDemoRows().write(out);
    }
    assertThat(listedAndFound(file, "XAG=30.00", "XAU=2500.00")).isGreaterThan(300);
    assertThat(listedAndFound(file, "XAG=31.25", "XAU=2500.00")).isGreaterThan(30);
  }

  @ParameterizedTest
  @ValueSource(strings = {"tracker-table.xlsx", "world-shoebox.xlsx"})
  void foreignInventories(String name) throws Exception {
    Path file =
        SharedFiles.copy(SharedFiles.folder("inventories").resolve(name), folder.resolve(name));
    assertThat(listedAndFound(file, "XAG=30.00", "XAU=2500.00")).isGreaterThan(300);
  }

  private int listedAndFound(Path file, String... prices) throws IOException {
    List<Object> words = new ArrayList<>(List.of("refresh", file, "--fill-protected"));
    for (String price : prices) {
      words.addAll(List.of("--spot", price));
    }
    Path old = Files.copy(file, folder.resolve("old-" + prices[0] + file.getFileName()));
    List<Object> dry = new ArrayList<>(words);
    dry.add("--dry-run");
    CommandRun listed = CommandRun.of(dry.toArray());
    assertThat(listed.code()).as(listed.err()).isZero();
    CommandRun filled = CommandRun.of(words.toArray());
    assertThat(filled.code()).as(filled.err()).isZero();
    int cells = 0;
    try (Workbook before = WorkbookFactory.create(old.toFile(), null, true);
        Workbook after = WorkbookFactory.create(file.toFile(), null, true)) {
      for (String line : listed.out().split("\\R(?=[^\\n]+![A-Z]+[0-9]+: )")) {
        Matcher cell = LINE.matcher(line.lines().findFirst().orElse(""));
        if (cell.matches()) {
          cells++;
          assertThat(says(cell.group(3), find(before, cell))).as("before: %s", line).isTrue();
          assertThat(says(cell.group(4), find(after, cell))).as("after: %s", line).isTrue();
        }
      }
    }
    return cells;
  }

  private static Cell find(Workbook workbook, Matcher line) {
    Sheet sheet = workbook.getSheet(line.group(1).replaceAll("^'|'$", ""));
    CellReference place = new CellReference(line.group(2));
    Row row = sheet == null ? null : sheet.getRow(place.getRow());
    return row == null ? null : row.getCell(place.getCol());
  }

  private static boolean says(String told, Cell cell) {
    String text = told.equals("(empty)") ? "" : told.substring(1, told.length() - 1);
    if (cell == null || cell.getCellType() == CellType.BLANK) {
      return text.isEmpty();
    }
    if (cell.getCellType() != CellType.FORMULA) {
      return value(text, cell, cell.getCellType());
    }
    String formula = "=" + cell.getCellFormula();
    if (!text.startsWith("=")) {
      return false;
    }
    int result = text.lastIndexOf(" (");
    String stored = result < 0 ? "" : text.substring(result + 2, text.length() - 1);
    String listed = result < 0 ? text : text.substring(0, result);
    return listed.replace(" ", "").equals(formula.replace(" ", ""))
        && value(stored, cell, cell.getCachedFormulaResultType());
  }

  private static boolean value(String told, Cell cell, CellType type) {
    return switch (type) {
      case NUMERIC -> number(told, cell);
      case STRING -> told.equals(cell.getStringCellValue());
      case BOOLEAN -> told.equals(cell.getBooleanCellValue() ? "TRUE" : "FALSE");
      default -> false;
    };
  }

  private static boolean number(String told, Cell cell) {
    if (DateUtil.isCellDateFormatted(cell) && told.contains("-")) {
      return told.startsWith(cell.getLocalDateTimeCellValue().toLocalDate().toString());
    }
    BigDecimal stored = BigDecimal.valueOf(cell.getNumericCellValue());
    return new BigDecimal(told).round(OFFICE).compareTo(stored.round(OFFICE)) == 0;
  }
}
