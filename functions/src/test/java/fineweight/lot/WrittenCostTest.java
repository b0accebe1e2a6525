package fineweight.lot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class WrittenCostTest {
  private static final Optional<Money> NO_SHEET = Optional.empty();

  /** One figure per row; a dash is a blank cell. */
  private static List<Optional<Money>> rows(String... figures) {
    return Arrays.stream(figures)
        .map(
            figure ->
                figure.equals("-")
                    ? Optional.<Money>empty()
                    : Optional.of(Money.parse("USD " + figure)))
        .toList();
  }

  private static Optional<Money> sheet(String figure) {
    return Optional.of(Money.parse("USD " + figure));
  }

  private static void assertKnown(WrittenCost cost, String amount, WrittenCost.Place place) {
    assertThat(cost).isInstanceOf(WrittenCost.Known.class);
    assertThat(((WrittenCost.Known) cost).cost()).isEqualTo(Money.parse("USD " + amount));
    assertThat(((WrittenCost.Known) cost).place()).isEqualTo(place);
  }

  private static void assertAsks(WrittenCost cost, String least, String most) {
    assertThat(cost).isInstanceOf(WrittenCost.Asks.class);
    assertThat(((WrittenCost.Asks) cost).least()).isEqualTo(Money.parse("USD " + least));
    assertThat(((WrittenCost.Asks) cost).most()).isEqualTo(Money.parse("USD " + most));
    assertThat(cost.sentence()).endsWith("?");
  }

  @Test
  void aFigureInTheFirstRowOnlyIsThePriceOfTheLot() {
    assertKnown(
        WrittenCost.of(rows("75.00", "-", "-"), NO_SHEET), "75.00", WrittenCost.Place.FIRST_ROW);
    assertKnown(WrittenCost.of(rows("75.00"), NO_SHEET), "75.00", WrittenCost.Place.FIRST_ROW);
  }

  @Test
  void aFigureInOneOtherRowAsks() {
    assertAsks(WrittenCost.of(rows("-", "5.00", "-"), NO_SHEET), "5.00", "5.00");
  }

  @Test
  void differentFiguresAreThePricesOfTheRows() {
    WrittenCost cost = WrittenCost.of(rows("22.00", "10.50", "4.00"), NO_SHEET);
    assertKnown(cost, "36.50", WrittenCost.Place.EACH_ROW);
    assertThat(cost.sentence()).doesNotContain("without");
    assertThat(WrittenCost.of(rows("22.00", "-", "4.00"), NO_SHEET).sentence())
        .endsWith("1 without a figure");
  }

  @Test
  void equalFiguresRepeatedAsk() {
    WrittenCost cost = WrittenCost.of(rows("60.00", "60.00", "60.00"), NO_SHEET);
    assertAsks(cost, "60.00", "180.00");
    assertThat(cost.sentence())
        .isEqualTo(
            "60.00 USD stands in 3 rows of the lot: is it the price of the whole lot, or of each"
                + " row (180.00 USD in all)?");
    assertAsks(WrittenCost.of(rows("60.00", "-", "60.00"), NO_SHEET), "60.00", "120.00");
  }

  @Test
  void zeroRepeatedIsAGift() {
    assertKnown(WrittenCost.of(rows("0.00", "0.00"), NO_SHEET), "0.00", WrittenCost.Place.EACH_ROW);
  }

  @Test
  void aFirstFigureThatIsTheSumOfTheOthersAsks() {
    assertAsks(WrittenCost.of(rows("36.50", "22.00", "14.50"), NO_SHEET), "36.50", "73.00");
  }

  @Test
  void theSheetOfLotsCountsWhereTheRowsSayTheSame() {
    assertKnown(
        WrittenCost.of(rows("-", "-"), sheet("75.00")), "75.00", WrittenCost.Place.OWN_SHEET);
    assertKnown(
        WrittenCost.of(rows("75.00", "75.00"), sheet("75.00")),
        "75.00",
        WrittenCost.Place.OWN_SHEET);
    assertKnown(
        WrittenCost.of(rows("50.00", "25.00"), sheet("75.00")),
        "75.00",
        WrittenCost.Place.OWN_SHEET);
  }

  @Test
  void theSheetOfLotsAsksWhereTheRowsContradictIt() {
    assertAsks(WrittenCost.of(rows("50.00", "20.00"), sheet("75.00")), "70.00", "75.00");
    assertAsks(WrittenCost.of(rows("50.00", "30.00"), sheet("75.00")), "75.00", "80.00");
  }

  @Test
  void noFigureIsSaid() {
    assertThat(WrittenCost.of(rows("-", "-"), NO_SHEET)).isInstanceOf(WrittenCost.Missing.class);
  }

  @Test
  void refusesNegativeFiguresAndNoRows() {
    assertThatThrownBy(() -> WrittenCost.of(rows("-1.00"), NO_SHEET))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> WrittenCost.of(rows("1.00"), sheet("-1.00")))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> WrittenCost.of(List.of(), NO_SHEET))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aQuestionNeverHasItsReadingsTheWrongWayRound() {
    Money one = Money.parse("USD 1.00");
    Money two = Money.parse("USD 2.00");
    assertThatThrownBy(() -> new WrittenCost.Asks("which?", two, one))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
