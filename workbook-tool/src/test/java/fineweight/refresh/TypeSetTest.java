package fineweight.refresh;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TypeSetTest {
  private static final String SHEET = "Fineweight type set";
  private static final RefreshWishes.Further US = RefreshWishes.Further.ofSet("us");

  @TempDir Path folder;

  private InventoryBook dimes() throws Exception {
    return InventoryBook.of(
        folder,
        "Year|Mint|Denomination|Type|Count|Grade|Status",
        "1941||dime|Mercury|1|G|",
        "1943|S|dime|Mercury|1|MS65|",
        "1944||dime|Mercury|3|VF, holed|",
        "1912||dime|Barber|1|VG|sell",
        "1998||pound|Britannia|1||");
  }

  @Test
  void saysWhatEachPieceDoesAndLetsItsOwnerOverrule() throws Exception {
    InventoryBook book = dimes().wishing(US);
    book.refresh("2026-11-02", "30", "2500");
    assertThat(book.column("Coins", "Type set").subList(0, 4))
        .satisfiesExactly(
            first -> assertThat(first).startsWith("sell: fills a hole"),
            second -> assertThat(second).startsWith("keep: improves"),
            third -> assertThat(third).startsWith("sell: duplicate"),
            fourth ->
                assertThat(fourth).startsWith("sell: fills a hole").contains("it leaves a hole"));
  }

  @Test
  void theSheetCountsPlacesAndNamesTheMetalFloorOfHoles() throws Exception {
    InventoryBook book = dimes().wishing(US);
    book.refresh("2026-11-02", "30", "2500");
    assertThat(book.lines(SHEET).get(1)).isEqualTo("2 of 110 places filled");
    assertThat(book.lines(SHEET))
        .anyMatch(line -> line.startsWith("dime|Liberty Head (Barber)|1892-1916|● held|1|row 5"))
        // 26.73 g x 0.900 / 31.1034768 g x 30 (Act of 18 January 1837).
        .anyMatch(line -> line.contains("Morgan") && line.endsWith("○ missing|||23.2"));
  }

  @Test
  void onlyWhereItIsAskedForAndThenAlways() throws Exception {
    InventoryBook book = dimes();
    book.refresh("2026-11-02", "30", "2500");
    assertThat(book.has(SHEET)).isFalse();
    book.wishing(US).refresh("2026-11-02", "30", "2500");
    byte[] with = book.bytes();
    book.wishing(RefreshWishes.Further.NOTHING);
    assertThat(book.refresh("2026-11-02", "30", "2500").changedCells()).isZero();
    assertThat(book.bytes()).isEqualTo(with);
  }
}
