package fineweight.refresh;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.money.WantedGain;
import fineweight.refresh.collection.Gains;
import fineweight.refresh.collection.SaleLine;
import fineweight.refresh.collection.SellingTerms;
import fineweight.sale.FeeSchedule;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Invented pieces, fees and prices. */
class SellingTest {
  private static final String HEADINGS =
      "Lot|Year|Mint|Denomination|Type|Count|Grade|Cost|Status|Sold for|Fees|Date sold";

  @TempDir Path folder;

  private static SellingTerms tenPercentFeeAndMargin() {
    return new SellingTerms(
        FeeSchedule.flat("an invented fair", BigDecimal.TEN, CurrencyUnit.USD),
        new WantedGain.Margin(new BigDecimal("20")));
  }

  @Test
  void theLeastPriceEarnsTheMarginAndOneCentLessDoesNot() throws Exception {
    InventoryBook book =
        InventoryBook.of(
                folder,
                HEADINGS,
                "|1881|S|dollar|Morgan|1|VF|35|for sale|||",
                "|1921||dollar|Morgan|1|VF|20||||")
            .wishing(RefreshWishes.Further.NOTHING.selling(tenPercentFeeAndMargin()));
    book.refresh("2026-11-02", "30", "2500");
    // price - 10 % - 35 = 20 % of the price: 0.7 x price = 35.
    assertThat(book.column("Coins", "Least price USD")).containsExactly("50", "");
    assertThat(book.refresh("2026-11-02", "30", "2500").changedCells()).isZero();
  }

  @Test
  void aSaleLineSaysOpenlyWhatThePieceIs() throws Exception {
    InventoryBook book =
        InventoryBook.of(
                folder,
                HEADINGS,
                "|1916|D|dime|Mercury|1|G, holed|7|for sale|||",
                "|1921||dollar|Morgan|1|VF|20|keep|||")
            .wishing(RefreshWishes.Further.ofSet("us").selling(tenPercentFeeAndMargin()));
    List<SaleLine> lines = book.refresh("2026-11-02", "30", "2500").selling().lines();
    assertThat(lines).hasSize(1);
    SaleLine line = lines.get(0);
    assertThat(line.coin().country()).isEqualTo("United States");
    assertThat(line.coin().words()).startsWith("dime");
    assertThat(line.coin().year()).isEqualTo("1916");
    assertThat(line.coin().mint()).isEqualTo("D");
    assertThat(line.state().holder()).isEqualTo("raw");
    assertThat(line.state().faults()).isEqualTo("holed");
    assertThat(line.figures().least()).contains(Money.parse("USD 10.00"));
    // 2.5 g x 0.900 / 31.1034768 g x 30 (Act of 12 February 1873).
    assertThat(line.figures().floor())
        .hasValueSatisfying(floor -> assertThat(floor).isEqualByComparingTo("2.17"));
    assertThat(book.lines("Fineweight for sale").get(4)).startsWith("1|row 2|United States|dime");
  }

  @Test
  void whatIsSoldLeavesTheTotalsAndItsGainIsReckonedByYear() throws Exception {
    InventoryBook book =
        InventoryBook.of(
            folder,
            HEADINGS,
            "|1881|S|dollar|Morgan|1|VF|20|sold|35|3.50|2026-03-02",
            "|1964||half dollar|Kennedy|2||16|sold 1|12|1|2025-06-01",
            "|1921||dollar|Morgan|1|VF|20||||",
            "|1922||dollar|Peace|1|VF|20|sold|||");
    RefreshReport report = book.refresh("2026-11-02", "30", "2500");
    assertThat(report.figures().rows()).isEqualTo(2);
    assertThat(report.figures().pieces()).isEqualTo(2);
    // One Morgan dollar and one half dollar are left: 23.20 + 10.85.
    assertThat(report.figures().money().least()).isEqualByComparingTo("34.05");
    Gains gains = report.selling().gains();
    assertThat(gains.years().stream().map(year -> year.year() + ": " + year.gain().money()))
        .containsExactly("2025: USD 3.00", "2026: USD 11.50");
    assertThat(gains.leftOut()).singleElement().asString().contains("row 5", "the day");
  }

  @Test
  void aPieceThatIsGoneKeepsItsShareOfTheCost() throws Exception {
    InventoryBook book =
        InventoryBook.of(
            folder,
            HEADINGS,
            "A|1881|S|dollar|Morgan|1|VF|30||||",
            "A|1964||half dollar|Kennedy|1|||||",
            "A|1907||20 dollars|Liberty|1|||||");
    book.refresh("2026-11-02", "30", "2500");
    String share = book.column("Coins", "Cost share USD").get(0);
    book.type("Coins", "Status", 2, "sold");
    book.type("Coins", "Sold for", 2, "40");
    book.type("Coins", "Date sold", 2, "2026-11-03");
    book.refresh("2026-11-09", "60", "2500");
    List<String> shares = book.column("Coins", "Cost share USD");
    assertThat(shares.get(0)).isEqualTo(share);
    assertThat(shares.stream().map(BigDecimal::new).reduce(BigDecimal.ZERO, BigDecimal::add))
        .isEqualByComparingTo("30");
  }

  @Test
  void partOfARowSoldReturnedAndTradedPiecesCarryTheirShareOfTheCost() throws Exception {
    InventoryBook book =
        InventoryBook.of(
            folder,
            HEADINGS,
            "|1881|S|dollar|Morgan|3||100|sold 2|90|6|2026-03-02",
            "|1964||half dollar|Kennedy|2||16|returned|16||2026-04-01",
            "|1921||dollar|Morgan|4||80|traded 1|30||2026-05-01",
            "|1922||dollar|Peace|2||40|returned 1|20||2026-06-01");
    RefreshReport report = book.refresh("2026-11-02", "30", "2500");
    // Still there: one, none, three and one.
    assertThat(report.figures().pieces()).isEqualTo(5);
    Gains gains = report.selling().gains();
    assertThat(gains.lines().stream().map(line -> line.gain().state() + " " + line.gain().pieces()))
        .containsExactly("SOLD 2", "RETURNED 2", "TRADED 1", "RETURNED 1");
    // Two of three carry 100 x 2 / 3 = 66.67, rounded half up; the trade 80 / 4.
    assertThat(gains.lines().stream().map(line -> line.gain().gain().money().toString()))
        .containsExactly("USD 17.33", "USD 0.00", "USD 10.00", "USD 0.00");
    assertThat(gains.years())
        .singleElement()
        .satisfies(
            year -> {
              assertThat(year.pieces()).isEqualTo(3);
              assertThat(year.gain().money()).isEqualTo(Money.parse("USD 27.33"));
            });
  }

  @Test
  void partsOfARowAreToldApart() throws Exception {
    InventoryBook book =
        InventoryBook.of(
            folder,
            HEADINGS,
            "|1881|S|dollar|Morgan|5||100|keep 1, sold 2|90|6|2026-03-02",
            "|1921||dollar|Morgan|4||80|sold 1 and returned 2|30||2026-05-01",
            "|1922||dollar|Peace|4||80|sold 1; for sale 2|35||2026-06-01",
            "|1923||dollar|Peace|3||60|keep 2, for sale 1|||",
            "|1924||dollar|Peace|2||40|not sold|||");
    RefreshReport report = book.refresh("2026-11-02", "30", "2500");
    // Left: three, one, three, three and two.
    assertThat(report.figures().pieces()).isEqualTo(12);
    Gains gains = report.selling().gains();
    assertThat(gains.lines().stream().map(line -> line.gain().state() + " " + line.gain().pieces()))
        .containsExactly("SOLD 2", "SOLD 1");
    // 90 - 6 - 2 x 20 and 35 - 20.
    assertThat(gains.years())
        .singleElement()
        .satisfies(year -> assertThat(year.gain().money()).isEqualTo(Money.parse("USD 59.00")));
    assertThat(gains.leftOut())
        .singleElement()
        .asString()
        .contains("row 3", "a row of its own with its price and day");
  }

  @Test
  void aPartThatIsForSaleCarriesItsPartOfTheCost() throws Exception {
    InventoryBook book =
        InventoryBook.of(
                folder,
                HEADINGS,
                "|1922||dollar|Peace|4||80|sold 1; for sale 2|35||2026-06-01",
                "|1923||dollar|Peace|3||60|for sale 1|||")
            .wishing(RefreshWishes.Further.NOTHING.selling(tenPercentFeeAndMargin()));
    List<SaleLine> lines = book.refresh("2026-11-02", "30", "2500").selling().lines();
    assertThat(lines.stream().map(line -> line.figures().pieces())).containsExactly(2L, 1L);
    // 80 x 2 / 4 and 60 / 3.
    assertThat(lines.stream().map(line -> line.figures().cost().orElseThrow()))
        .containsExactly(Money.parse("USD 40.00"), Money.parse("USD 20.00"));
  }
}
