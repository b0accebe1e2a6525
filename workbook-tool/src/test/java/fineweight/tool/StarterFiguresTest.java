package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import fineweight.workbook.office.Office;
import fineweight.workbook.validity.WorkbookValidator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The demo rows, refreshed by the real command, against figures worked out by hand from published
 * texts.
 */
class StarterFiguresTest {
  /** NIST Handbook 44, Appendix C: 1 troy ounce = 31.103 476 8 g, 1 grain = 64.798 91 mg. */
  private static final BigDecimal OUNCE = new BigDecimal("31.1034768");

  private static final BigDecimal GRAIN = new BigDecimal("0.06479891");

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void refresh() {
    file = folder.resolve("starter.xlsx");
    assertThat(Told.by("starter", file).code()).isZero();
    Told told = refreshed();
    assertThat(told.code()).as(told.err()).isZero();
  }

  private Told refreshed() {
    return Told.by("refresh", file, "--spot", "XAG=30.00", "--spot", "XAU=2500.00");
  }

  /**
   * Fine grams of one piece, or fine grains where the law speaks in grains, and the melt of the row
   * at 30.00 and 2500.00.
   *
   * <ul>
   *   <li>1, 6, 7: Coinage Act of 1873, 17 Stat. 424, s. 15: half dollar 12.5 g, quarter a half and
   *       dime a fifth of it; s. 13: 900.
   *   <li>2: Act of 27 March 1942, title XII, and 35 % of 5 g as the Mint struck it.
   *   <li>4: Coinage Act of 1965, s. 101: half dollar 11.5 g, 400.
   *   <li>10, 11, 12: Act of 18 January 1837, 5 Stat. 136, ss. 8 and 9, and Act of 28 February
   *       1878: dollar 412 1/2 grains, 900: 371.25 grains fine.
   *   <li>13: Coinage Act of 1873, s. 14: eagle 258 grains, 900: 232.2 grains fine.
   *   <li>14 at least: Act of 21 February 1853: half dollar 192 grains, quarter in proportion, 900.
   *   <li>16: Liberty Coin Act of 1985, Mint: one troy ounce of silver.
   *   <li>17: Coinage Act 1870, 33 and 34 Vict. c. 10, first schedule: 123.27447 grains, 11/12.
   *   <li>21: Convention of 23 December 1865 (Latin Monetary Union): 2 francs 10 g, 835.
   *   <li>18, 19, 20: from memory: 90 grains, 800; 30 g, 900; 12 g, 835.
   *   <li>22: common practice, no source: an ounce of a round is an ounce of fine silver.
   * </ul>
   */
  @ParameterizedTest
  @CsvSource({
    "1,  12, silver, 5.625,        g,    65.11",
    "2,  40, silver, 1.75,         g,    67.52",
    "4,  8,  silver, 4.6,          g,    35.49",
    "6,  25, silver, 2.25,         g,    54.25",
    "7,  5,  silver, 11.25,        g,    54.25",
    "10, 2,  silver, 371.25,       gr,   46.41",
    "11, 1,  silver, 371.25,       gr,   23.20",
    "12, 3,  silver, 371.25,       gr,   69.61",
    "13, 1,  gold,   232.2,        gr,   1209.38",
    "14, 1,  silver, 86.4,         gr,   5.40",
    "16, 1,  silver, 31.1034768,   g,    30.00",
    "17, 1,  gold,   113.0015975,  gr,   588.55",
    "18, 4,  silver, 72,           gr,   18.00",
    "19, 1,  silver, 27,           g,    26.04",
    "20, 3,  silver, 10.02,        g,    28.99",
    "21, 2,  silver, 8.35,         g,    16.11",
    "22, 5,  silver, 31.1034768,   g,    150.00",
  })
  void figuresAgreeWithTheTexts(
      int number, int count, String metal, BigDecimal fine, String unit, BigDecimal melt)
      throws IOException {
    Map<String, String> row = rows().get(number);
    BigDecimal grams = unit.equals("gr") ? fine.multiply(GRAIN) : fine;
    BigDecimal ounces =
        grams.multiply(BigDecimal.valueOf(count)).divide(OUNCE, MathContext.DECIMAL64);
    assertThat(row.get("Metal")).isEqualTo(metal);
    assertThat(new BigDecimal(row.get("Fine g each"))).isCloseTo(grams, within("0.0006"));
    assertThat(new BigDecimal(row.get(metal.equals("gold") ? "Gold ozt" : "Silver ozt")))
        .isCloseTo(ounces, within("0.0001"));
    assertThat(new BigDecimal(row.get("Melt USD"))).isEqualByComparingTo(melt);
  }

  private static org.assertj.core.data.Offset<BigDecimal> within(String amount) {
    return org.assertj.core.data.Offset.offset(new BigDecimal(amount));
  }

  /** Grounds as above; 1976-S: Public Law 93-127, 11.5 g of 400, or clad without silver. */
  @ParameterizedTest
  @CsvSource({
    // 6 x 1.75 g of silver if the large letter is there.
    "3,  0.00, 10.13",
    // Without arrows 103 1/8 grains of 900 by the Act of 1837.
    "14, 5.40, 5.80",
    "15, 0.00, 8.87",
  })
  void whereTwoCoinsFitTheLowestCountsAndAQuestionIsAsked(
      int number, BigDecimal least, BigDecimal most) throws IOException {
    Map<String, String> row = rows().get(number);
    assertThat(row.get("State")).isEqualTo("◐ several");
    assertThat(new BigDecimal(row.get("Melt USD"))).isEqualByComparingTo(least);
    assertThat(new BigDecimal(row.get("Melt at most USD"))).isEqualByComparingTo(most);
    assertThat(row.get("Note")).contains("?");
  }

  @ParameterizedTest
  @CsvSource({"5", "8", "9", "23", "24", "25"})
  void whatHoldsNoPreciousMetalGetsNoMeltAndAReason(int number) throws IOException {
    Map<String, String> row = rows().get(number);
    assertThat(row.get("State")).isIn("– nothing to value", "○ not known");
    assertThat(row).doesNotContainKeys("Melt USD", "Silver ozt", "Gold ozt");
    assertThat(row.get("Note")).isNotBlank();
  }

  @Test
  void aSecondRefreshWritesNothing() throws IOException {
    byte[] before = Files.readAllBytes(file);
    assertThat(refreshed().out()).contains("the file was not written");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @Test
  void takingOutGivesTheTypedCellsBack() throws IOException {
    assertThat(Told.by("take-out", file).code()).isZero();
    Path fresh = folder.resolve("fresh.xlsx");
    Told.by("starter", fresh);
    assertThat(cells(file)).isEqualTo(cells(fresh));
  }

  @Test
  void theResultIsASoundPackage() throws IOException {
    assertThat(WorkbookValidator.findings(file)).isEmpty();
  }

  @Test
  void anOfficeCalculatesTheSameMelt() throws Exception {
    Office.onThisMachine().csv(List.of(file), folder.resolve("office"), true);
    List<CsvRecord> records;
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder().ofCsvRecord(folder.resolve("office/starter-Inventory.csv"))) {
      records = reader.stream().toList();
    }
    int melt = records.get(0).getFields().indexOf("Melt USD");
    int compared = 0;
    Map<Integer, Map<String, String>> stored = rows();
    for (CsvRecord record : records.subList(1, records.size())) {
      String ours = stored.get(Integer.parseInt(record.getField(0))).get("Melt USD");
      if (ours != null) {
        assertThat(new BigDecimal(record.getField(melt)))
            .as(record.getField(0))
            .isEqualByComparingTo(new BigDecimal(ours));
        compared++;
      }
    }
    assertThat(compared).isEqualTo(19);
  }

  /** The inventory's cells by number and heading; blank ones are left out. */
  private Map<Integer, Map<String, String>> rows() throws IOException {
    Map<Integer, Map<String, String>> rows = new HashMap<>();
    try (Workbook workbook = WorkbookFactory.create(file.toFile(), null, true)) {
      Sheet sheet = workbook.getSheet("Inventory");
      Row headings = sheet.getRow(0);
      for (int at = 1; at <= sheet.getLastRowNum(); at++) {
        Map<String, String> row = new HashMap<>();
        for (Cell cell : sheet.getRow(at)) {
          String text = text(cell);
          if (!text.isEmpty()) {
            row.put(headings.getCell(cell.getColumnIndex()).getStringCellValue(), text);
          }
        }
        rows.put(new BigDecimal(row.get("No")).intValueExact(), row);
      }
    }
    return rows;
  }

  private static String text(Cell cell) {
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    return switch (type) {
      case NUMERIC ->
          new BigDecimal(Double.toString(cell.getNumericCellValue()))
              .round(new MathContext(15, RoundingMode.HALF_UP))
              .stripTrailingZeros()
              .toPlainString();
      case STRING -> cell.getStringCellValue();
      default -> "";
    };
  }

  private static Map<String, String> cells(Path file) throws IOException {
    Map<String, String> cells = new HashMap<>();
    try (Workbook workbook = WorkbookFactory.create(file.toFile(), null, true)) {
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (!text(cell).isEmpty()) {
              cells.put(sheet.getSheetName() + "!" + cell.getAddress(), text(cell));
            }
          }
        }
      }
    }
    return cells;
  }
}
