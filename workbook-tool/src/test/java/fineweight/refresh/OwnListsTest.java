package fineweight.refresh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.refresh.own.OwnListWishes;
import fineweight.valuation.QuotedPayout;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lists of the collector's own beside his inventory; every price and rate is invented. */
class OwnListsTest {
  private static final String WORTH = "Worth USD";
  private static final String GROUND = "Worth rests on";

  @TempDir Path folder;

  private InventoryBook dimes() throws Exception {
    return InventoryBook.of(
        folder,
        "Year|Mint|Denomination|Type|Count|Grade|Cert",
        "1916|D|dime|Mercury|1|VG-8|",
        "1916|D|dime|Mercury|2|F-12|",
        "1916|D|dime|Mercury|1|MS65|",
        "1916|D|dime|Mercury|1|VF-20|7654321",
        "1916|D|dime|Mercury|1|VF-20, holed|",
        "1941||dime|Mercury|1|F-12|");
  }

  private InventoryBook priced() throws Exception {
    return dimes()
        .with(
            "My prices",
            "Invented prices of mine",
            "Coin|Year|Mint|Grade|Certified|Price|As of|Origin",
            "Mercury dime|1916|D|VG-8||800|2026-05-01|club",
            "Mercury dime|1916|D|VF-20||1600|2026-03-01|club",
            "Mercury dime|1916|D|VF-20|yes|2000|2026-05-01|fair");
  }

  @Test
  void theOwnPriceListGivesWorthByGradeWithItsAgeAndOrigin() throws Exception {
    InventoryBook book = priced();
    RefreshReport report = book.refresh("2026-11-02", "30", "2500");
    List<String> worth = book.column("Coins", WORTH);
    List<String> ground = book.column("Coins", GROUND);
    assertThat(report.inventory().sheet()).isEqualTo("Coins");
    assertThat(worth.get(0)).isEqualTo("800");
    assertThat(ground.get(0)).contains("your price list", "grade 8", "club, 2026-05-01");
    // 12 lies a third of the way from 8 to 20: 800 + 800 / 3 each, two pieces.
    assertThat(worth.get(1)).isEqualTo("2133.33");
    assertThat(ground.get(1)).contains("2026-05-01", "2026-03-01");
    assertThat(worth.get(3)).isEqualTo("2000");
    assertThat(ground.get(3)).contains("fair, 2026-05-01");
  }

  @Test
  void noPriceBeyondTheEndsForDamageOrForAnotherDate() throws Exception {
    InventoryBook book = priced();
    book.refresh("2026-11-02", "30", "2500");
    List<String> worth = book.column("Coins", WORTH);
    List<String> ground = book.column("Coins", GROUND);
    // 2.5 g x 0.900 / 31.1034768 g x 30 (Act of 12 February 1873).
    assertThat(worth.get(2)).isEqualTo("2.17");
    assertThat(ground.get(2)).contains("your list ends at grade 20");
    assertThat(worth.get(4)).isEqualTo("2.17");
    assertThat(ground.get(4)).contains("damaged");
    assertThat(worth.get(5)).isEqualTo("2.17");
    assertThat(book.refresh("2026-11-02", "30", "2500").changedCells()).isZero();
  }

  @Test
  void badLinesAndClashesAreNamedWithRowAndRemedy() throws Exception {
    InventoryBook book =
        dimes()
            .with(
                "My prices",
                "Type|Year|Grade|Price|As of",
                "Mercury dime|1941|F-12|five|2026-01-01",
                "Mercury dime|1941|blue|5|2026-01-01",
                "Merkurius dimmer|1941|F-12|5|2026-01-01",
                "Mercury dime|1941|F-12|5|2026-01-01",
                "Mercury dime|1941|F-12|4|2026-01-01",
                "Mercury dime|19x1|F-12|4|2026-01-01",
                "Mercury dime|1941|F-12|4 GBP|2026-01-01");
    List<String> said = book.refresh("2026-11-02", "30", "2500").badCells();
    assertThat(said)
        .hasSize(6)
        .allMatch(sentence -> sentence.contains("coins.xlsx, sheet \"My prices\", row"))
        .anyMatch(sentence -> sentence.contains("row 2: \"five\" is no price; write"))
        .anyMatch(sentence -> sentence.contains("row 3: \"blue\" is no grade; write"))
        .anyMatch(sentence -> sentence.contains("row 4:") && sentence.contains("no coin"))
        .anyMatch(sentence -> sentence.contains("rows 5 and 6: two prices"))
        .anyMatch(sentence -> sentence.contains("row 7: \"19x1\" is no year"))
        .anyMatch(sentence -> sentence.contains("row 8:") && sentence.contains("--rate GBP="));
    assertThat(book.column("Coins", WORTH).get(5)).isEqualTo("4");
  }

  @Test
  void payoutsOfASheetRuleTheWorthButNotTheMelt() throws Exception {
    InventoryBook book =
        InventoryBook.of(
                folder,
                "Year|Denomination|Type|Count|Payout class",
                "1941|dime|Mercury|10|",
                "1944|dime|Mercury|10|my buyer",
                "1967|half dollar|Kennedy|2|",
                "1907|20 dollars|Liberty|1|")
            .with(
                "Buyer",
                "Metal|Class|Payout",
                "silver||90 %",
                "silver|my buyer|102 %",
                "silver|40 %|-1/ozt",
                "gold||+10/piece");
    book.refresh("2026-11-02", "30", "2500");
    List<String> worth = book.column("Coins", WORTH);
    // 10 x 2.5 g x 0.900 / 31.1034768 g = 0.72339 ozt; x 30 x 0.90, x 1.02.
    assertThat(worth.get(0)).isEqualTo("19.53");
    assertThat(worth.get(1)).isEqualTo("22.14");
    // 2 x 4.6 g / 31.1034768 g x (30 - 1) (Act of 23 July 1965, section 101(a)).
    assertThat(worth.get(2)).isEqualTo("8.58");
    // 33.436 g x 0.900 / 31.1034768 g x 2500 + 10 (Act of 18 January 1837).
    assertThat(new BigDecimal(worth.get(3)).subtract(BigDecimal.TEN))
        .isEqualByComparingTo(book.column("Coins", "Melt USD").get(3));
    assertThat(book.column("Coins", GROUND))
        .satisfiesExactly(
            first -> assertThat(first).contains("90 % of melt"),
            second -> assertThat(second).contains("102 % of melt"),
            third -> assertThat(third).contains("minus 1.00 USD an ounce"),
            fourth -> assertThat(fourth).contains("plus 10.00 USD a piece"));
    assertThat(book.refresh("2026-11-02", "30", "2500").changedCells()).isZero();
  }

  @Test
  void aSinglePayoutCountsBeforeTheSheet() throws Exception {
    OwnListWishes.Quote quote = new OwnListWishes.Quote("XAG", "", QuotedPayout.read("50 %"));
    InventoryBook book =
        dimes()
            .with("Buyer", "Metal|Payout", "silver|90 %")
            .wishing(
                RefreshWishes.Further.NOTHING.withLists(
                    new OwnListWishes(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(quote),
                        Map.of(),
                        Optional.empty())));
    book.refresh("2026-11-02", "30", "2500");
    assertThat(book.column("Coins", WORTH).get(5)).isEqualTo("1.09");
  }

  @Test
  void ratesOfASheetConvertPricesCostsAndFaceValues() throws Exception {
    InventoryBook book =
        InventoryBook.of(
                folder,
                "Lot|Country|Year|Denomination|Count|Cost|Currency|My value",
                "A|Germany|2002|2 euro|10|22|EUR|",
                "B||1941|dime|1|3|GBP|40 CAD",
                "C||1941|dime|1|3||50 JPY")
            .with(
                "Rates",
                "Currency|USD for one|Date",
                "EUR|1.10|2026-10-01",
                "GBP|1.25|2026-10-02",
                "CAD|0.7|2026-10-02",
                "XYZ|1|2026-10-02");
    RefreshReport report = book.refresh("2026-11-02", "30", "2500");
    List<String> worth = book.column("Coins", WORTH);
    assertThat(worth.subList(0, 2)).containsExactly("22", "28");
    List<String> ground = book.column("Coins", GROUND);
    assertThat(ground.get(0)).contains("face value 22.00 USD");
    assertThat(ground.get(1)).contains("40.00 CAD at the rate of 2026-10-01");
    assertThat(ground.get(2)).contains("your price in JPY does not count");
    assertThat(worth.get(2)).isEqualTo("2.17");
    assertThat(report.badCells()).singleElement().asString().contains("row 5", "XYZ");
    assertThat(book.lines("Fineweight lots"))
        .anyMatch(line -> line.startsWith("A|") && line.contains("|24.2|"))
        .anyMatch(line -> line.startsWith("B|") && line.contains("|3.75|"));
  }

  @Test
  void aListThatIsNamedMustBeThere() throws Exception {
    InventoryBook book =
        dimes()
            .wishing(
                RefreshWishes.Further.NOTHING.withLists(
                    new OwnListWishes(
                        Optional.of("Coins"),
                        Optional.empty(),
                        Optional.of("Coins"),
                        List.of(),
                        Map.of(),
                        Optional.empty())));
    assertThatThrownBy(() -> book.refresh("2026-11-02", "30", "2500"))
        .isInstanceOf(RefreshRefusal.class);
  }
}
