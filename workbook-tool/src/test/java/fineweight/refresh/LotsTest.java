package fineweight.refresh;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Invented lots. One Morgan dollar holds 0.77344 ozt of silver, so 23.20 at 30 an ounce; a half
 * dollar of 1964 holds 12.5 g x 0.900 / 31.1034768 g = 0.36169 ozt, so 10.85.
 */
class LotsTest {
  private static final String SHEET = "Fineweight lots";
  private static final String HEADINGS = "Lot|Year|Denomination|Type|Count|Cost";

  @TempDir Path folder;

  private InventoryBook book(String... rows) throws Exception {
    String[] lines = new String[rows.length + 1];
    lines[0] = HEADINGS;
    System.arraycopy(rows, 0, lines, 1, rows.length);
    InventoryBook book = InventoryBook.of(folder, lines);
    book.refresh("2026-11-02", "30", "2500");
    return book;
  }

  private static BigDecimal sum(List<String> cells) {
    return cells.stream()
        .filter(cell -> !cell.isEmpty())
        .map(BigDecimal::new)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static String line(InventoryBook book, String lot, String heading) throws Exception {
    int row = book.column(SHEET, "Lot").indexOf(lot);
    return book.column(SHEET, heading).get(row);
  }

  @Test
  void aCostInTheFirstRowIsThatOfTheWholeLot() throws Exception {
    InventoryBook book =
        book("A|1881|dollar|Morgan|1|30.00", "A|1921|dollar|Morgan|1|", "A|1964|half dollar||1|");
    assertThat(line(book, "A", "Cost")).isEqualTo("30");
    assertThat(line(book, "A", "Worth at least USD")).isEqualTo("57.25");
    assertThat(line(book, "A", "Gain USD")).isEqualTo("27.25");
    assertThat(new BigDecimal(line(book, "A", "Gain, % of cost"))).isEqualByComparingTo("0.908333");
    assertThat(line(book, "A", "Paid for itself")).contains("row 3", "number 2");
    assertThat(line(book, "A", "Remarks")).contains("first row");
  }

  @Test
  void theSharesOfACostAddUpToItByRelativeWorth() throws Exception {
    InventoryBook book =
        book("A|1881|dollar|Morgan|1|30.00", "A|1921|dollar|Morgan|1|", "A|1964|half dollar||1|");
    // 30 x 23.20 / 57.25 = 12.157 and 30 x 10.85 / 57.25 = 5.686: the cents left over go to the
    // largest remainders.
    assertThat(book.column("Coins", "Cost share USD")).containsExactly("12.16", "12.16", "5.68");
    assertThat(sum(book.column("Coins", "Cost share USD"))).isEqualByComparingTo("30");
  }

  @Test
  void noSharesWhereEachRowHasItsOwnCost() throws Exception {
    InventoryBook book = book("A|1881|dollar|Morgan|1|20.00", "A|1921|dollar|Morgan|1|25.00");
    assertThat(book.hasColumn("Cost share USD")).isFalse();
    assertThat(line(book, "A", "Cost")).isEqualTo("45");
  }

  @Test
  void aRepeatedFigureIsAskedAboutAndAnsweredInTheFramedCell() throws Exception {
    InventoryBook book = book("A|1881|dollar|Morgan|1|40.00", "A|1921|dollar|Morgan|1|40.00");
    assertThat(line(book, "A", "Remarks")).contains("price of the whole lot", "80.00 USD in all");
    assertThat(line(book, "A", "Cost")).isEqualTo("40");
    assertThat(book.hasColumn("Cost share USD")).isFalse();
    book.type(SHEET, "Your figure", 4, "40");
    book.refresh("2026-11-02", "30", "2500");
    assertThat(line(book, "A", "Remarks")).doesNotContain("?");
    assertThat(line(book, "A", "Your figure")).isEqualTo("40");
    assertThat(book.column("Coins", "Cost share USD")).containsExactly("20", "20");
    assertThat(book.refresh("2026-11-02", "30", "2500").changedCells()).isZero();
  }

  @Test
  void aSheetOfLotsOfTheOwnersGivesTheCost() throws Exception {
    InventoryBook book =
        InventoryBook.of(
                folder,
                "Lot|Year|Denomination|Type",
                "A|1881|dollar|Morgan",
                "A|1921|dollar|Morgan")
            .with("Bought", "Lot|Bought from|Cost", "A|an invented fair|41.00", "B|nobody|7");
    book.refresh("2026-11-02", "30", "2500");
    assertThat(line(book, "A", "Cost")).isEqualTo("41");
    assertThat(book.column("Coins", "Cost share USD")).containsExactly("20.5", "20.5");
  }

  @Test
  void theBreakEvenSpotPutBackGivesNoGain() throws Exception {
    InventoryBook book = book("A|1881|dollar|Morgan|1|58.008", "A|1921|dollar|Morgan|1|");
    // 58.01 / (2 x 0.77344 ozt) = 37.50.
    assertThat(book.lines(SHEET))
        .anyMatch(line -> line.contains("silver at 37.50 USD per ozt"))
        .anyMatch(line -> line.contains("with all metals at 125.00 % of today's spot"));
    book.refresh("2026-11-09", "37.50", "2500");
    assertThat(new BigDecimal(line(book, "A", "Gain USD")).abs())
        .isLessThanOrEqualTo(new BigDecimal("0.01"));
  }

  @Test
  void theTableOfSpotsAndTheRunningTotalAgreeWithTheLotsLine() throws Exception {
    InventoryBook book = book("A|1881|dollar|Morgan|1|30", "A|1964|half dollar||1|");
    // Each row rounded at its own cell: 16.24 + 7.60, 18.56 + 8.68, and so on.
    assertThat(book.lines(SHEET)).contains("A|worth|23.84|27.24|30.65|34.05|37.46|40.86|44.27");
    assertThat(book.lines("Fineweight opening"))
        .contains("A|2|row 3|10.85|34.05|30|4.05|PAID FOR: 1964 half dollar 1");
    assertThat(line(book, "A", "Worth at least USD")).isEqualTo("34.05");
  }

  @Test
  void aCostInAnotherCurrencyIsNotSetAgainstTheWorth() throws Exception {
    InventoryBook book = book("A|1881|dollar|Morgan|1|€ 30", "A|1921|dollar|Morgan|1|");
    assertThat(line(book, "A", "Cost in")).isEqualTo("EUR");
    assertThat(line(book, "A", "Gain USD")).isEmpty();
    assertThat(line(book, "A", "Remarks")).contains("another currency");
  }
}
