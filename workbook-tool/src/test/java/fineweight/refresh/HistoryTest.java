package fineweight.refresh;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Fine silver of a Morgan dollar: 26.73 g x 0.900 / 31.1034768 g = 0.77344 ozt (Act of 18 January
 * 1837, 412.5 grains, nine tenths fine).
 */
class HistoryTest {
  private static final String SHEET = "Fineweight history";

  @TempDir Path folder;
  private InventoryBook book;

  @BeforeEach
  void twoDollars() throws Exception {
    book =
        InventoryBook.of(
            folder, "Year|Denomination|Type|Count", "1881|dollar|Morgan|1", "1921|dollar|Morgan|1");
  }

  private List<String> dates() throws Exception {
    return book.column(SHEET, "Date of the prices");
  }

  @Test
  void eachDateAddsOneLineWithItsFigures() throws Exception {
    book.refresh("2026-11-02", "30", "2500");
    book.refresh("2026-11-09", "31", "2500");
    assertThat(dates()).containsExactly("2026-11-02", "2026-11-09");
    assertThat(book.column(SHEET, "Silver per ozt")).containsExactly("30", "31");
    // Twice 0.77344 ozt x 30 = 23.2032 and x 31 = 23.9766, each rounded at its cell.
    assertThat(book.column(SHEET, "Melt at least")).containsExactly("46.4", "47.96");
    assertThat(book.column(SHEET, "Worth")).containsExactly("46.4", "47.96");
  }

  @Test
  void anUnchangedSecondRunWritesNothing() throws Exception {
    book.refresh("2026-11-02", "30", "2500");
    byte[] first = book.bytes();
    assertThat(book.refresh("2026-11-02", "30", "2500").changedCells()).isZero();
    assertThat(book.bytes()).isEqualTo(first);
  }

  @Test
  void aLaterDateWithTheSameFiguresAddsNothing() throws Exception {
    book.refresh("2026-11-02", "30", "2500");
    book.refresh("2026-11-09", "30", "2500");
    assertThat(dates()).containsExactly("2026-11-02");
  }

  @Test
  void pricesOfOneDayThereAndBackGiveTheFirstFile() throws Exception {
    book.refresh("2026-11-02", "30", "2500");
    byte[] first = book.bytes();
    book.refresh("2026-11-02", "33", "2500");
    assertThat(book.column(SHEET, "Silver per ozt")).containsExactly("33");
    book.refresh("2026-11-02", "30", "2500");
    assertThat(book.bytes()).isEqualTo(first);
  }

  @Test
  void returningToAnEarlierDateLeavesTheHistoryAndGivesTheFirstFiguresElsewhere() throws Exception {
    book.refresh("2026-11-02", "30", "2500");
    List<String> coins = book.lines("Coins");
    book.refresh("2026-11-09", "33", "2500");
    List<String> history = book.lines(SHEET);
    book.refresh("2026-11-02", "30", "2500");
    assertThat(book.lines("Coins")).isEqualTo(coins);
    assertThat(book.lines(SHEET)).isEqualTo(history);
  }

  @Test
  void whatItsOwnerWritesIntoAnEarlierLineStays() throws Exception {
    book.refresh("2026-11-02", "30", "2500");
    book.type(SHEET, "Worth", 4, "48.00");
    book.refresh("2026-11-09", "31", "2500");
    book.refresh("2026-11-16", "32", "2500");
    assertThat(book.column(SHEET, "Worth").get(0)).isEqualTo("48");
    assertThat(dates()).containsExactly("2026-11-02", "2026-11-09", "2026-11-16");
  }
}
