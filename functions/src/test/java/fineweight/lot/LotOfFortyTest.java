package fineweight.lot;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.money.Amounts;
import fineweight.money.WantedGain;
import fineweight.quantity.Mass;
import fineweight.sale.Commission;
import fineweight.sale.FeeSchedule;
import fineweight.sale.Handling;
import fineweight.sale.LeastPrice;
import fineweight.sale.Payment;
import fineweight.sale.RealisedGain;
import fineweight.sale.RowLedger;
import fineweight.valuation.OwnPrice;
import fineweight.valuation.Piece;
import fineweight.valuation.Samples;
import fineweight.valuation.Valuation;
import fineweight.valuation.Valuer;
import fineweight.valuation.WorthCurve;
import fineweight.valuation.WorthRange;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * An invented lot of forty rows, bought for 1640.00, from the opening to the last sale. The masses
 * are those of the statutes; prices, own figures and fees are invented. All expected figures were
 * worked out apart, in exact fractions by a script in another language, and not by this program.
 */
class LotOfFortyTest {
  private static final Money COST = Money.parse("USD 1640.00");
  private static final List<NamedCsvRecord> ROWS = new ArrayList<>();
  private static final List<Valuation> VALUATIONS = new ArrayList<>();

  @BeforeAll
  static void openTheLot() throws IOException {
    try (Reader text =
            new InputStreamReader(
                LotOfFortyTest.class.getResourceAsStream("lot-of-forty.csv"),
                StandardCharsets.UTF_8);
        CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(text)) {
      rows.forEach(ROWS::add);
    }
    Valuer valuer = new Valuer(Samples.SPOTS);
    ROWS.forEach(row -> VALUATIONS.add(valuer.value(piece(row))));
  }

  private static Piece piece(NamedCsvRecord row) {
    FineContent content =
        new FineContent(
            Map.of(
                Metal.SILVER, Mass.ofGrams(row.getField("silver_g")),
                Metal.GOLD, Mass.ofGrams(row.getField("gold_g"))));
    Piece piece =
        Piece.of(content)
            .times(Integer.parseInt(row.getField("count")))
            .withFace(Samples.usd(row.getField("face")));
    String own = row.getField("own");
    return own.isEmpty() ? piece : piece.priced(OwnPrice.stated(Samples.usd(own)));
  }

  private static List<Money> column(String name) {
    return ROWS.stream().map(row -> usd(row.getField(name))).toList();
  }

  private static Money usd(String amount) {
    return Money.parse("USD " + amount);
  }

  private static List<WorthCurve> curves() {
    return VALUATIONS.stream().map(Valuation::curve).toList();
  }

  private static CostShares shares() {
    return CostShares.byWorth(
        COST,
        VALUATIONS.stream().map(valuation -> valuation.worth().money()).toList(),
        VALUATIONS.stream().map(valuation -> valuation.piece().count()).toList());
  }

  @Test
  void everyRowHasItsMeltAndItsWorth() {
    assertThat(VALUATIONS).hasSize(40);
    assertThat(VALUATIONS.stream().map(one -> Amounts.atCell(one.melt())).toList())
        .isEqualTo(column("melt"));
    assertThat(VALUATIONS.stream().map(one -> one.worth().atCell()).toList())
        .isEqualTo(column("worth"));
  }

  @Test
  void theLotHasPaidForItselfAtTheThirtySeventhRow() {
    RunningTotal running = RunningTotal.of(COST, column("worth"));
    assertThat(running.steps().stream().map(RunningTotal.Step::total).toList())
        .isEqualTo(column("running"));
    assertThat(running.paidAt()).hasValue(37);
    assertThat(running.gain().money()).isEqualTo(usd("137.14"));
  }

  @Test
  void theCostIsSharedByWorthToTheCent() {
    assertThat(shares().shares()).isEqualTo(column("share"));
    assertThat(Money.total(shares().shares())).isEqualTo(COST);
  }

  @Test
  void keptPiecesCarryTheirOwnCost() {
    List<LotTotals.Row> rows = new ArrayList<>();
    for (int i = 0; i < ROWS.size(); i++) {
      rows.add(
          new LotTotals.Row(
              WorthRange.settled(VALUATIONS.get(i)),
              shares().shares().get(i),
              ROWS.get(i).getField("kept").equals("yes")));
    }
    LotTotals all = LotTotals.of(CurrencyUnit.USD, rows);
    assertThat(all.pieces()).isEqualTo(228);
    assertThat(all.least().melt()).isEqualTo(usd("935.10"));
    assertThat(all.least().worth()).isEqualTo(usd("1777.14"));
    LotTotals kept = LotTotals.ofKept(CurrencyUnit.USD, rows);
    assertThat(kept.cost()).isEqualTo(usd("824.99"));
    assertThat(kept.least().worth()).isEqualTo(usd("893.99"));
    LotTotals forSale = LotTotals.ofForSale(CurrencyUnit.USD, rows);
    assertThat(forSale.cost().plus(kept.cost())).isEqualTo(COST);
    assertThat(forSale.pieces() + kept.pieces()).isEqualTo(228);
  }

  @Test
  void theLotBreaksEvenWithSilverAt2165() {
    BreakEven silver = BreakEven.ofMetal(COST, curves(), Samples.perOunce(Metal.SILVER, "30"));
    assertThat(silver.spot().orElseThrow().amount().setScale(8, RoundingMode.HALF_UP))
        .isEqualByComparingTo("21.65134513");
    BreakEven all = BreakEven.ofAllMetals(COST, curves());
    assertThat(all.factor().orElseThrow().setScale(10, RoundingMode.HALF_UP))
        .isEqualByComparingTo("0.8502870389");
  }

  @Test
  void theWorthMovesWithSpotButOwnPricesAndFaceHoldIt() {
    SpotTable table =
        SpotTable.of(COST, curves(), EnumSet.allOf(Metal.class), SpotTable.USUAL_MOVES);
    assertThat(table.lines())
        .extracting(line -> line.movePercent() + " " + line.worth().getAmount())
        .containsExactly(
            "-30 1502.33",
            "-20 1593.91",
            "-10 1685.56",
            "0 1777.14",
            "10 1868.78",
            "20 1960.36",
            "30 2052.01");
  }

  @Test
  void theBidForItLeavesTenPerCent() {
    BuyingTerms terms = new BuyingTerms(new BigDecimal("15"), BigDecimal.ZERO, usd("12.00"), false);
    Bid bid = Bid.of(terms, new WantedGain.Margin(BigDecimal.TEN), usd("1777.14"), usd("1777.14"));
    assertThat(bid.low().orElseThrow().price()).isEqualTo(usd("1380.36"));
    assertThat(bid.low().orElseThrow().total()).isEqualTo(usd("1599.41"));
  }

  private static FeeSchedule fees() {
    return new FeeSchedule(
        "invented",
        Commission.flat(new BigDecimal("11")),
        usd("0.40"),
        new Payment(new BigDecimal("2.9"), usd("0.00")),
        new Handling(usd("5.00"), usd("4.80"), usd("0.60")));
  }

  @ParameterizedTest
  @CsvSource({"2, 42.83, 50.84", "20, 4.62, 6.46", "29, 279.01, 325.15", "37, 78.44, 92.20"})
  void whatARowMustFetchToCoverItsShare(int number, String share, String price) {
    Money cost = shares().shares().get(number - 1);
    assertThat(cost).isEqualTo(usd(share));
    LeastPrice least = fees().leastPrice(cost).orElseThrow();
    assertThat(least.proceeds().price()).isEqualTo(usd(price));
    assertThat(least.gain().money()).isEqualTo(usd("0.00"));
  }

  /** Two Peace dollars at 27.00 each sent together; nine quarters in two sales. */
  @Test
  void salesAreReckonedByYear() {
    Money peace = fees().net(usd("54.00"));
    // 54.00 + 5.00 - 5.94 - 0.40 - 1.71 - 4.80 - 0.60
    assertThat(peace).isEqualTo(usd("45.55"));
    List<RealisedGain> gains = new ArrayList<>();
    gains.addAll(
        RowLedger.untouched("2", 2, usd("42.83"))
            .with(RowLedger.Part.sold(2, LocalDate.of(2025, 11, 3), peace))
            .gains());
    gains.addAll(
        RowLedger.untouched("19", 9, usd("45.06"))
            .with(RowLedger.Part.sold(4, LocalDate.of(2025, 12, 30), usd("22.00")))
            .with(RowLedger.Part.sold(5, LocalDate.of(2026, 1, 2), usd("26.50")))
            .gains());
    assertThat(ROWS.get(18).getField("share")).isEqualTo("45.06");
    // 45.06 x 4 / 9 = 20.0266..., so the first four carry 20.03 and the other five 25.03.
    assertThat(RealisedGain.byYear(gains))
        .extracting(year -> year.year() + " " + year.gain().money().getAmount())
        .containsExactly("2025 4.69", "2026 1.47");
  }

  @Test
  void aKeptRowHasNoGain() {
    RowLedger kept = RowLedger.untouched("1", 1, usd("21.41")).with(RowLedger.Part.kept(1));
    assertThat(kept.gains()).isEmpty();
    assertThat(Optional.of(kept.cost(fineweight.sale.SaleState.KEPT))).contains(usd("21.41"));
  }
}
