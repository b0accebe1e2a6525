package fineweight.refresh;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.office.Office;
import fineweight.workbook.oracle.parts.RawZip;
import fineweight.workbook.validity.WorkbookValidator;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Invented coins. Fine silver of a Morgan dollar: 412.5 grains of 900 (Act of 18 January 1837), so
 * 0.77344 ozt and 23.20 at 30 an ounce; a half dollar of 1964 holds 0.36169 ozt, so 10.85.
 */
class TotalsAndChartsTest {
  private static final String TOTALS = "Fineweight totals";
  private static final String OPENING = "Fineweight opening";
  private static final String[] ROWS = {
    "Lot|Year|Denomination|Type|Count|Cost",
    "A|1881|dollar|Morgan|1|30",
    "A|1964|half dollar||1|",
    "B|1921|dollar|Morgan|2|400",
    "B|1964|half dollar||1|",
    "B||an unknown token||1|",
    "C|1881|dollar|Morgan|1|20"
  };

  @TempDir Path folder;

  private InventoryBook book() throws Exception {
    InventoryBook book = InventoryBook.of(folder, ROWS);
    book.refresh("2026-11-02", "30", "2500");
    return book;
  }

  private static ChartPoints charts(XSSFWorkbook workbook) {
    return new ChartPoints(workbook);
  }

  @Test
  void everyDivisionAddsUpToTheLineOfAllPieces() throws Exception {
    List<String[]> lines =
        book().lines(TOTALS).stream().map(line -> line.split("\\|", -1)).toList();
    String[] all = lines.stream().filter(line -> line[0].equals("All pieces")).findFirst().get();
    // 4 x 0.7734... + 2 x 0.3617...; 4 dollars and 2 halves, rows of 23.20, 46.41, 10.85.
    assertThat(all).startsWith("All pieces", "6", "7").contains("114.51");
    for (String division : List.of("By metal", "By state", "By lot", "By type")) {
      BigDecimal[] sums = new BigDecimal[all.length];
      boolean within = false;
      int members = 0;
      for (String[] line : lines) {
        boolean heading = line[0].startsWith("By ");
        within = heading ? line[0].equals(division) : within;
        if (within && !heading) {
          members++;
          for (int i = 1; i < all.length; i++) {
            BigDecimal cell = new BigDecimal(line[i]);
            sums[i] = sums[i] == null ? cell : sums[i].add(cell);
          }
        }
      }
      assertThat(members).as(division).isGreaterThan(1);
      for (int i = 1; i < all.length; i++) {
        assertThat(sums[i].subtract(new BigDecimal(all[i])).abs())
            .as(division + ", column " + i)
            .isLessThan(new BigDecimal("0.0000000001"));
      }
    }
  }

  @Test
  void totalsOfOpenRowsAreSaidAsARange() throws Exception {
    // A five cents of 1942 without its mint mark is of nickel or of the wartime alloy.
    InventoryBook book = InventoryBook.of(folder, "Year|Denomination|Count", "1942|five cents|10");
    book.refresh("2026-11-02", "30", "2500");
    // 10 x 1.75 g of silver (Act of 27 March 1942: 35 per cent of 5 g) at 30: 16.88.
    assertThat(book.lines(TOTALS).get(1))
        .contains("Melt is at least 0", "at most 16.88 USD", "1 row open");
  }

  @Test
  void everyPointOfEveryChartIsItsCell() throws Exception {
    InventoryBook book = book();
    for (int week = 2; week <= 5; week++) {
      book.refresh("2026-12-0" + week, "3" + week, "2500");
      try (XSSFWorkbook workbook = book.opened()) {
        assertThat(charts(workbook).titles(TOTALS)).hasSize(week < 5 ? 1 : 2);
      }
    }
    assertThat(WorkbookValidator.findings(book.file())).isEmpty();
    try (XSSFWorkbook workbook = book.opened()) {
      ChartPoints charts = charts(workbook);
      assertThat(charts.titles(TOTALS))
          .containsExactly("Fine troy ounces by metal", "Worth and melt over time");
      assertThat(charts.titles(OPENING))
          .containsExactly("Lot B: not yet paid for", "Lot A: paid for");
      // gold and silver; five dates twice; three rows and two rows, each with worth and cost.
      assertThat(charts.compareAll()).isEqualTo(2 + 10 + 6 + 4);
      assertThat(charts.values(OPENING, 0, 1)).containsExactly(400.0, 400.0, 400.0);
    }
  }

  @Test
  void fortyLotsHaveTwelveChartsAndASentence() throws Exception {
    List<String> rows = new ArrayList<>(List.of(ROWS[0]));
    for (int lot = 1; lot <= 40; lot++) {
      rows.add("Lot " + lot + "|1881|dollar|Morgan|1|" + (lot % 2 == 0 ? 20 : 90));
      rows.add("Lot " + lot + "|1964|half dollar||1|");
    }
    InventoryBook book = InventoryBook.of(folder, rows.toArray(String[]::new));
    book.refresh("2026-11-02", "30", "2500");
    try (XSSFWorkbook workbook = book.opened()) {
      List<String> titles = charts(workbook).titles(OPENING);
      assertThat(titles).hasSize(12).allMatch(title -> title.endsWith("not yet paid for"));
      // Every second lot costs more than its 34.05: the first twelve of those are 1, 3, ... 23.
      assertThat(titles).contains("Lot 1: not yet paid for", "Lot 23: not yet paid for");
    }
    assertThat(book.lines(OPENING).get(2)).contains("12 at most", "28 lots have none");
    assertThat(WorkbookValidator.findings(book.file())).isEmpty();
  }

  @Test
  void aSecondRunWritesNothingAndTakingOutLeavesNoChart() throws Exception {
    InventoryBook book = InventoryBook.of(folder, ROWS);
    Map<String, RawZip.Entry> before = RawZip.of(book.file()).entries();
    book.refresh("2026-11-02", "30", "2500");
    byte[] first = book.bytes();
    assertThat(book.refresh("2026-11-02", "30", "2500").changedCells()).isZero();
    assertThat(book.bytes()).isEqualTo(first);
    book.refresh("2026-11-02", "31", "2500");
    book.refresh("2026-11-02", "30", "2500");
    assertThat(book.bytes()).isEqualTo(first);
    book.takeOut();
    Map<String, RawZip.Entry> after = RawZip.of(book.file()).entries();
    assertThat(after.keySet()).isEqualTo(before.keySet());
    assertThat(text(after, "[Content_Types].xml")).isEqualTo(text(before, "[Content_Types].xml"));
    assertThat(cells(after)).isEqualTo(cells(before));
  }

  private static String text(Map<String, RawZip.Entry> parts, String part) throws Exception {
    return new String(parts.get(part).content(), StandardCharsets.UTF_8);
  }

  private static String cells(Map<String, RawZip.Entry> parts) throws Exception {
    return text(parts, "xl/worksheets/sheet1.xml")
        .replaceAll("(?s).*(<sheetData.*</sheetData>).*", "$1");
  }

  @Test
  void theOfficePrintsIt() throws Exception {
    InventoryBook book = book();
    Office.onThisMachine().pdf(book.file(), folder.resolve("out"));
    assertThat(folder.resolve("out/coins.pdf")).isNotEmptyFile();
  }
}
