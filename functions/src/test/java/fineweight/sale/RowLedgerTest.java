package fineweight.sale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RowLedgerTest {
  private static final LocalDate SPRING = LocalDate.of(2025, 4, 12);
  private static final LocalDate WINTER = LocalDate.of(2026, 1, 9);

  private static Money usd(String amount) {
    return Money.parse("USD " + amount);
  }

  /** Twenty invented halves for 250.00: five kept, six sold, two returned, three traded. */
  private static final RowLedger HALVES =
      RowLedger.untouched("17", 20, usd("250.00"))
          .with(RowLedger.Part.kept(5))
          .with(RowLedger.Part.sold(6, SPRING, usd("96.00")))
          .with(RowLedger.Part.returned(2, SPRING, usd("25.00")))
          .with(RowLedger.Part.traded(3, WINTER, usd("40.00")));

  @Test
  void aPartOfARowMayBeSold() {
    assertThat(HALVES.pieces(SaleState.SOLD)).isEqualTo(6);
    assertThat(HALVES.pieces(SaleState.KEPT)).isEqualTo(5);
    assertThat(HALVES.pieces(SaleState.RETURNED)).isEqualTo(2);
    assertThat(HALVES.pieces(SaleState.TRADED)).isEqualTo(3);
    assertThat(HALVES.pieces(SaleState.UNSOLD)).isEqualTo(4);
    assertThat(HALVES.cost(SaleState.SOLD)).isEqualTo(usd("75.00"));
    assertThat(HALVES.cost(SaleState.KEPT)).isEqualTo(usd("62.50"));
    assertThat(HALVES.cost(SaleState.UNSOLD)).isEqualTo(usd("50.00"));
  }

  @Test
  void everyPartThatIsGoneHasItsGain() {
    assertThat(HALVES.gains())
        .extracting(gain -> gain.state() + " " + gain.gain().money())
        .containsExactly("SOLD USD 21.00", "RETURNED USD 0.00", "TRADED USD 2.50");
  }

  @Test
  void aLaterPartNeverChangesTheCostOfAnEarlierOne() {
    RowLedger row = RowLedger.untouched("3", 3, usd("10.00"));
    RowLedger once = row.with(RowLedger.Part.sold(1, SPRING, usd("5.00")));
    RowLedger twice = once.with(RowLedger.Part.sold(1, WINTER, usd("5.00")));
    assertThat(once.gains().get(0)).isEqualTo(twice.gains().get(0));
    assertThat(twice.gains())
        .extracting(RealisedGain::cost)
        .containsExactly(usd("3.33"), usd("3.34"));
    assertThat(twice.cost(SaleState.UNSOLD)).isEqualTo(usd("3.33"));
  }

  @Test
  void gainsAreAddedUpByYearWithoutReturns() {
    assertThat(RealisedGain.byYear(HALVES.gains()))
        .extracting(
            year ->
                year.year()
                    + ": "
                    + year.pieces()
                    + " for "
                    + year.received()
                    + ", "
                    + year.gain().money())
        .containsExactly("2025: 6 for USD 96.00, USD 21.00", "2026: 3 for USD 40.00, USD 2.50");
    assertThat(RealisedGain.byYear(List.of())).isEmpty();
  }

  @Test
  void aSaleBelowCostIsALoss() {
    RowLedger row =
        RowLedger.untouched("4", 1, usd("12.00")).with(RowLedger.Part.sold(1, SPRING, usd("9.00")));
    assertThat(RealisedGain.byYear(row.gains()).get(0).gain().money()).isEqualTo(usd("-3.00"));
    assertThat(row.gains().get(0).gain().percentOfCost().orElseThrow()).isEqualByComparingTo("-25");
  }

  @Test
  void anUntouchedRowIsUnsold() {
    RowLedger row = RowLedger.untouched("5", 7, Money.zero(CurrencyUnit.USD));
    assertThat(row.pieces(SaleState.UNSOLD)).isEqualTo(7);
    assertThat(row.gains()).isEmpty();
  }

  @Test
  void refusesMoreThanTheRowHolds() {
    assertThatThrownBy(() -> HALVES.with(RowLedger.Part.sold(5, WINTER, usd("1.00"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("row 17 has 20 pieces, but 21 are accounted for");
    assertThatThrownBy(() -> RowLedger.untouched("1", 0, usd("1.00")))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> RowLedger.untouched("1", 1, usd("-1.00")))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void refusesPartsThatSayTooLittle() {
    assertThatThrownBy(
            () -> new RowLedger.Part(SaleState.SOLD, 1, Optional.empty(), Optional.of(usd("1.00"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("needs its date");
    assertThatThrownBy(
            () -> new RowLedger.Part(SaleState.TRADED, 1, Optional.of(SPRING), Optional.empty()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () -> new RowLedger.Part(SaleState.UNSOLD, 1, Optional.empty(), Optional.empty()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> RowLedger.Part.kept(0)).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @EnumSource(SaleState.class)
  void aStateIsReadFromItsWord(SaleState state) {
    assertThat(SaleState.read(" " + state.word().toUpperCase(java.util.Locale.ROOT) + " "))
        .contains(state);
  }

  @Test
  void onlyWordsOfStatesAreRead() {
    assertThat(SaleState.read("lost")).isEmpty();
    assertThat(SaleState.KEPT.isGone()).isFalse();
    assertThat(SaleState.TRADED.isGone()).isTrue();
  }

  @Test
  void whatReturnedPiecesLostIsShownButNotCountedAsASale() {
    RowLedger row =
        RowLedger.untouched("6", 2, usd("50.00"))
            .with(RowLedger.Part.returned(1, SPRING, usd("22.00")))
            .with(RowLedger.Part.traded(1, SPRING, usd("30.00")));
    assertThat(row.gains())
        .extracting(gain -> gain.gain().money())
        .containsExactly(usd("-3.00"), usd("5.00"));
    assertThat(RealisedGain.byYear(row.gains()))
        .singleElement()
        .satisfies(
            year -> {
              assertThat(year.year()).isEqualTo(2025);
              assertThat(year.pieces()).isEqualTo(1);
              assertThat(year.cost()).isEqualTo(usd("25.00"));
              assertThat(year.gain().percentOfCost().orElseThrow()).isEqualByComparingTo("20");
            });
  }

  @Test
  void aKeptPartMayCarryADay() {
    RowLedger.Part part =
        new RowLedger.Part(SaleState.KEPT, 1, Optional.of(SPRING), Optional.empty());
    RowLedger row = RowLedger.untouched("7", 1, usd("3.00")).with(part);
    assertThat(row.gains()).isEmpty();
    assertThat(row.cost(SaleState.KEPT)).isEqualTo(usd("3.00"));
    assertThat(row.pieces(SaleState.UNSOLD)).isZero();
  }
}
