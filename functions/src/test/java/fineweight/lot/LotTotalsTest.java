package fineweight.lot;

import static fineweight.valuation.Samples.usd;
import static org.assertj.core.api.Assertions.assertThat;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.Mass;
import fineweight.valuation.OwnPrice;
import fineweight.valuation.Piece;
import fineweight.valuation.Samples;
import fineweight.valuation.Valuation;
import fineweight.valuation.Valuer;
import fineweight.valuation.WorthRange;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class LotTotalsTest {
  private static final Valuer VALUER = new Valuer(Samples.SPOTS);
  private static final Valuation HALVES =
      VALUER.value(Piece.of(Samples.HALF_DOLLAR).withFace(usd("0.50")).times(4));
  private static final Valuation KEY_DATE =
      VALUER.value(Piece.of(Samples.DIME).priced(OwnPrice.stated(usd("85"))));
  // A 1942 five cents without its mint mark noted: no silver, or 1.75 g of it.
  private static final WorthRange OPEN =
      WorthRange.among(
          List.of(
              VALUER.value(Piece.of(FineContent.NONE).withFace(usd("0.05"))),
              VALUER.value(Piece.of(Samples.silver("1.75")).withFace(usd("0.05")))));

  private static final List<LotTotals.Row> ROWS =
      List.of(
          row(WorthRange.settled(HALVES), "30.00", false),
          row(WorthRange.settled(KEY_DATE), "60.00", true),
          row(OPEN, "0.50", false));

  private static LotTotals.Row row(WorthRange range, String cost, boolean kept) {
    return new LotTotals.Row(range, Money.parse("USD " + cost), kept);
  }

  /** Melt by hand: 45 g / 31.1034768 x 30 = 43.40; 2.25 g = 2.17; 1.75 g = 1.69. */
  @Test
  void addsUpTheFiguresOfTheCells() {
    LotTotals totals = LotTotals.of(CurrencyUnit.USD, ROWS);
    assertThat(totals.pieces()).isEqualTo(6);
    assertThat(totals.cost()).isEqualTo(Money.parse("USD 90.50"));
    assertThat(totals.least().content().of(Metal.SILVER)).isEqualTo(Mass.ofGrams("47.25"));
    assertThat(totals.most().content().of(Metal.SILVER)).isEqualTo(Mass.ofGrams("49"));
    assertThat(totals.least().melt()).isEqualTo(Money.parse("USD 45.57"));
    assertThat(totals.most().melt()).isEqualTo(Money.parse("USD 47.26"));
    assertThat(totals.least().worth()).isEqualTo(Money.parse("USD 128.45"));
    assertThat(totals.most().worth()).isEqualTo(Money.parse("USD 130.09"));
    assertThat(totals.leastGain().money()).isEqualTo(Money.parse("USD 37.95"));
    assertThat(totals.mostGain().money()).isEqualTo(Money.parse("USD 39.59"));
  }

  @Test
  void openRowsAreSaid() {
    assertThat(LotTotals.of(CurrencyUnit.USD, ROWS).worthWords())
        .isEqualTo("at least 128.45 USD, at most 130.09 USD, 1 open");
    assertThat(LotTotals.of(CurrencyUnit.USD, ROWS.subList(0, 2)).worthWords())
        .isEqualTo("128.40 USD");
  }

  @Test
  void keptPiecesStandApartFromThoseForSale() {
    LotTotals kept = LotTotals.ofKept(CurrencyUnit.USD, ROWS);
    LotTotals forSale = LotTotals.ofForSale(CurrencyUnit.USD, ROWS);
    assertThat(kept.cost()).isEqualTo(Money.parse("USD 60.00"));
    assertThat(kept.least().worth()).isEqualTo(Money.parse("USD 85.00"));
    assertThat(forSale.cost()).isEqualTo(Money.parse("USD 30.50"));
    assertThat(forSale.pieces()).isEqualTo(5);
    assertThat(forSale.openRows()).isEqualTo(1);
  }

  @Test
  void anEmptyLotComesToNothing() {
    LotTotals totals = LotTotals.of(CurrencyUnit.USD, List.of());
    assertThat(totals.pieces()).isZero();
    assertThat(totals.worthWords()).isEqualTo("0.00 USD");
    assertThat(totals.leastGain().percentOfCost()).isEmpty();
  }
}
