package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.tool.judge.FilledRow;
import fineweight.tool.judge.FilledTable;
import fineweight.workbook.corpus.SharedFiles;
import fineweight.workbook.office.Office;
import java.io.FileInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An office calculates the melt figures as we do, and follows a price that is typed in. */
class LibreOfficeAgreesTest {
  private static final Map<String, String> PRICES =
      Map.of("XAU", "2500", "XAG", "30", "XPT", "1000");

  @TempDir Path folder;

  @Test
  void trackerIsCalculatedTheSame() throws Exception {
    Office office = Office.onThisMachine();
    Path tracker = SharedFiles.folder("inventories").resolve("tracker-table.xlsx");
    agrees(office, CommandRun.copy(tracker, folder), "Tracker", 40);
  }

  @Test
  void aSheetOfManyCoinsIsCalculatedTheSame() throws Exception {
    agrees(Office.onThisMachine(), manyCoins(), "Coins", 200);
  }

  /** Counts that are no round figures, so that roundings would show. */
  private Path manyCoins() throws IOException {
    Book book = Book.ofCoins();
    String[] coins = {"half dollar", "quarter", "dime", "dollar", "eagle", "double eagle", "cent"};
    int[] years = {1943, 1912, 1899, 1922, 1907, 1900, 1951};
    for (int i = 0; i < 280; i++) {
      int coin = i % coins.length;
      book.row("Coins", years[coin], coins[coin], 1 + i * 37 % 411, 10);
    }
    return book.save(folder.resolve("many.xlsx"));
  }

  private void agrees(Office office, Path file, String sheet, int least) throws Exception {
    CommandRun run = CommandRun.refresh(file);
    assertThat(run.code()).as(run.err()).isZero();
    FilledTable stored = FilledTable.ofWorkbook(file, sheet, 1);
    FilledTable shown = calculated(office, file, sheet, "first");
    int figures = 0;
    for (Map.Entry<Integer, FilledRow> row : stored.rows().entrySet()) {
      FilledRow there = shown.row(row.getKey());
      same("melt of row " + row.getKey(), row.getValue().melt(), there.melt());
      same("most of row " + row.getKey(), row.getValue().meltAtMost(), there.meltAtMost());
      figures += there.melt().isPresent() ? 1 : 0;
    }
    assertThat(figures).isGreaterThanOrEqualTo(least);
  }

  private static void same(
      String what, java.util.Optional<BigDecimal> ours, java.util.Optional<BigDecimal> theirs) {
    assertThat(theirs.isPresent()).as(what).isEqualTo(ours.isPresent());
    ours.ifPresent(figure -> assertThat(theirs.get()).as(what).isEqualByComparingTo(figure));
  }

  private FilledTable calculated(Office office, Path file, String sheet, String run)
      throws Exception {
    Path out = folder.resolve("office-" + run);
    office.csv(List.of(file), out, true);
    String name = file.getFileName().toString().replace(".xlsx", "-" + sheet + ".csv");
    return FilledTable.ofText(out.resolve(name), ',', StandardCharsets.UTF_8, 1);
  }

  @Test
  void aTypedPriceMovesEveryMelt() throws Exception {
    Office office = Office.onThisMachine();
    Path file = manyCoins();
    assertThat(CommandRun.refresh(file).done()).isTrue();
    FilledTable before = FilledTable.ofWorkbook(file, "Coins", 1);
    type(file, "Fineweight_XAG", 41.17);
    FilledTable shown = calculated(office, file, "Coins", "typed");
    int moved = 0;
    for (Map.Entry<Integer, FilledRow> row : before.rows().entrySet()) {
      FilledRow ours = row.getValue();
      if (ours.state() == FilledRow.State.VALUED) {
        BigDecimal wanted = melt(ours, "41.17");
        assertThat(shown.row(row.getKey()).melt()).as("row " + row.getKey()).isPresent();
        assertThat(shown.row(row.getKey()).melt().get())
            .as("row " + row.getKey())
            .isEqualByComparingTo(wanted);
        boolean changed = wanted.compareTo(ours.melt().orElseThrow()) != 0;
        assertThat(changed).isEqualTo(ours.ounces("XAG").signum() > 0);
        moved += changed ? 1 : 0;
      }
    }
    assertThat(moved).isGreaterThan(100);
  }

  /** The ounces in the cells times the prices, in exact decimals. */
  private static BigDecimal melt(FilledRow row, String silver) {
    BigDecimal sum = row.ounces("XAG").multiply(new BigDecimal(silver));
    for (String code : List.of("XAU", "XPT")) {
      sum = sum.add(row.ounces(code).multiply(new BigDecimal(PRICES.get(code))));
    }
    return sum.setScale(2, RoundingMode.HALF_UP);
  }

  @Test
  void aLaterRefreshWithoutPricesTakesTheTypedOne() throws Exception {
    Path file = manyCoins();
    assertThat(CommandRun.refresh(file).done()).isTrue();
    type(file, "Fineweight_XAG", 41.17);
    CommandRun run = CommandRun.of("refresh", file);
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(run.out()).contains("taken from the workbook's spot sheet");
    FilledTable table = FilledTable.ofWorkbook(file, "Coins", 1);
    for (FilledRow row : table.rows().values()) {
      if (row.state() == FilledRow.State.VALUED) {
        assertThat(row.melt().orElseThrow()).isEqualByComparingTo(melt(row, "41.17"));
      }
    }
  }

  @Test
  void ourColumnsAreKnownAgainAfterAnOfficeHasSavedTheFile() throws Exception {
    Office office = Office.onThisMachine();
    Path file = manyCoins();
    assertThat(CommandRun.refresh(file).done()).isTrue();
    List<String> headings = FilledTable.ofWorkbook(file, "Coins", 1).headings();
    Path saved = folder.resolve("saved");
    office.saveAgain(file, saved);
    Path again = saved.resolve("many.xlsx");
    CommandRun run = CommandRun.of("refresh", again, "--spot", "XAG=31");
    assertThat(run.code()).as(run.err()).isZero();
    FilledTable table = FilledTable.ofWorkbook(again, "Coins", 1);
    assertThat(table.headings()).isEqualTo(headings);
    assertThat(table.row(2).melt().orElseThrow()).isEqualByComparingTo(melt(table.row(2), "31"));
  }

  /** Types a price into the cell behind a name, as a person would. */
  private static void type(Path file, String name, double price) throws IOException {
    try (FileInputStream in = new FileInputStream(file.toFile());
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      CellReference cell = new CellReference(book.getName(name).getRefersToFormula());
      book.getSheet(cell.getSheetName())
          .getRow(cell.getRow())
          .getCell(cell.getCol())
          .setCellValue(price);
      try (OutputStream out = Files.newOutputStream(file)) {
        book.write(out);
      }
    }
  }
}
