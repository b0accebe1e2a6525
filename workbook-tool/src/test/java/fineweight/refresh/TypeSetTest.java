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

  @Test
  void aSheetOfTheOwnersPlacesWorksTheSame() throws Exception {
    InventoryBook book =
        dimes()
            .with(
                "My set",
                "Place|Coin|Years|Mints",
                "Mercury from San Francisco|Mercury dime||S",
                "Mercury, early|Mercury dime|1916-1921|",
                "Morgan dollar|||",
                "Any Barber|Barber dime|1892-1916|",
                "Nonsense|gobbledygook||");
    RefreshReport report = book.refresh("2026-11-02", "30", "2500");
    assertThat(report.badCells())
        .singleElement()
        .asString()
        .contains("\"My set\", row 6", "no coin");
    assertThat(book.lines(SHEET).get(0)).startsWith("Type set: My set");
    assertThat(book.lines(SHEET).get(1)).isEqualTo("2 of 4 places filled");
    assertThat(book.lines(SHEET))
        .anyMatch(
            line -> line.startsWith("dime|Mercury from San Francisco|") && line.contains("row 3"))
        .anyMatch(
            line -> line.startsWith("dollar|Morgan dollar|") && line.endsWith("○ missing|||23.2"));
    assertThat(book.column("Coins", "Type set").subList(0, 4))
        .satisfiesExactly(
            first -> assertThat(first).isEqualTo("not in the set"),
            second -> assertThat(second).startsWith("keep: fills a hole"),
            third -> assertThat(third).isEqualTo("not in the set"),
            fourth -> assertThat(fourth).startsWith("sell: fills a hole"));
    assertThat(book.refresh("2026-11-02", "30", "2500").changedCells()).isZero();
  }

  @Test
  void everyDateAndMintOfACoinIsASetAndIsRemembered() throws Exception {
    InventoryBook book =
        dimes().wishing(RefreshWishes.Further.ofSet("dates: Mercury dime; mints none, D, S"));
    book.refresh("2026-11-02", "30", "2500");
    assertThat(book.lines(SHEET).get(0))
        .startsWith("Type set: every date and mint of Mercury dime");
    assertThat(book.lines(SHEET).get(1)).isEqualTo("3 of 81 places filled");
    assertThat(book.lines(SHEET))
        // 27 dates without 1922, 1932 and 1933, times three mints.
        .anyMatch(line -> line.startsWith("dime|1943-S|1943|● held|1|row 3"))
        .anyMatch(line -> line.startsWith("dime|1943-D|1943|○ missing"));
    byte[] with = book.bytes();
    book.wishing(RefreshWishes.Further.NOTHING).refresh("2026-11-02", "30", "2500");
    assertThat(book.bytes()).isEqualTo(with);
  }
}
