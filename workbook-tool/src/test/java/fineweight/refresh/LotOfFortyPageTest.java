package fineweight.refresh;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fineweight.sale.RealisedGain;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The invented lot of forty from opening to last sale gives the figures of its page. */
class LotOfFortyPageTest {
  private static final Path ROOT = Path.of(System.getProperty("fineweight.root", ".."));
  private static final int FIRST_OF_SALES = 5;

  @TempDir Path folder;

  private static List<List<String>> list() throws Exception {
    List<List<String>> lines = new ArrayList<>();
    try (var records = CsvReader.builder().ofCsvRecord(ROOT.resolve("docs/lot-of-forty.csv"))) {
      records.forEach(line -> lines.add(line.getFields()));
    }
    return lines;
  }

  /** The worths of each row as worked out apart, in exact fractions and in another language. */
  private static List<BigDecimal> workedOutApart() throws Exception {
    List<BigDecimal> worths = new ArrayList<>();
    Path cases = ROOT.resolve("functions/src/test/resources/fineweight/lot/lot-of-forty.csv");
    try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(cases)) {
      rows.forEach(row -> worths.add(new BigDecimal(row.getField("worth"))));
    }
    return worths;
  }

  private static String rounded(String ounces) {
    return new BigDecimal(ounces).setScale(4, RoundingMode.HALF_UP).toPlainString();
  }

  private static void holds(String page, String figure) {
    String bold = Pattern.quote("**" + figure);
    assertThat(page).containsPattern(bold + "( pieces| USD)?\\*\\*");
  }

  @Test
  void everyBoldFigureOfThePageIsSo() throws Exception {
    String page = Files.readString(ROOT.resolve("docs/lot-of-forty.md"));
    List<List<String>> list = list();
    InventoryBook book =
        InventoryBook.of(
            folder,
            list.stream()
                .map(line -> line.equals(list.get(0)) ? line : line.subList(0, FIRST_OF_SALES))
                .map(line -> String.join("|", line))
                .toArray(String[]::new));
    book.wishing(RefreshWishes.Further.ofSet("us"));
    RefreshReport opened = book.refresh("2026-11-25", "30", "2500");
    holds(page, Long.toString(opened.figures().pieces()));
    holds(page, opened.figures().money().least().toPlainString());
    String all = book.lines("Fineweight totals").get(4);
    List<String> cells = List.of(all.split("\\|"));
    holds(page, rounded(cells.get(3)));
    holds(page, rounded(cells.get(4)));
    holds(page, cells.get(7));
    worthsAreThoseWorkedOutApart(book);
    holds(page, book.column("Fineweight lots", "Paid for itself").get(0));
    holds(page, book.column("Fineweight lots", "Gain USD").get(0));
    assertThat(book.lines("Fineweight lots"))
        .anyMatch(line -> line.contains("silver at 21.65 USD"));
    holds(page, "silver at 21.65");
    try (XSSFWorkbook workbook = book.opened()) {
      assertThat(new ChartPoints(workbook).compareAll()).isEqualTo(2 + 80);
    }
    sold(book, list, page);
  }

  /** The catalogue has 27.22 g for a Trade dollar, which is a cent more than 420 grains. */
  private static void worthsAreThoseWorkedOutApart(InventoryBook book) throws Exception {
    List<BigDecimal> apart = workedOutApart();
    List<String> worths = book.column("Fineweight opening", "Worth");
    assertThat(worths).hasSize(40);
    for (int i = 0; i < 40; i++) {
      BigDecimal allowed = new BigDecimal(i == 26 ? "0.01" : "0");
      assertThat(new BigDecimal(worths.get(i)).subtract(apart.get(i)).abs())
          .as("row " + (i + 1))
          .isLessThanOrEqualTo(allowed);
    }
  }

  private static void sold(InventoryBook book, List<List<String>> list, String page)
      throws Exception {
    BigDecimal typed = BigDecimal.ZERO;
    for (int row = 1; row < list.size(); row++) {
      List<String> line = list.get(row);
      for (int column = FIRST_OF_SALES; column < line.size(); column++) {
        book.type("Coins", list.get(0).get(column), row + 1, line.get(column));
      }
      if (line.get(FIRST_OF_SALES).equals("sold")) {
        typed = typed.add(new BigDecimal(line.get(6))).subtract(new BigDecimal(line.get(7)));
      }
    }
    RefreshReport after = book.refresh("2026-12-21", "30", "2500");
    RealisedGain.Year year = after.selling().gains().years().get(0);
    assertThat(year.received().getAmount()).isEqualByComparingTo(typed);
    holds(page, year.received().getAmount().toPlainString());
    holds(page, year.cost().getAmount().toPlainString());
    holds(page, year.gain().money().getAmount().toPlainString());
    holds(page, after.figures().money().least().toPlainString());
  }
}
