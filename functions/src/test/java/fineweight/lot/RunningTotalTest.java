package fineweight.lot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class RunningTotalTest {
  private static RunningTotal running(String cost, String... worths) {
    return RunningTotal.of(
        Money.parse("USD " + cost),
        Arrays.stream(worths).map(worth -> Money.parse("USD " + worth)).toList());
  }

  @Test
  void tellsAtWhichPieceTheLotPaidForItself() {
    RunningTotal running = running("50.00", "21.70", "10.85", "17.45", "3.00");
    assertThat(running.paidAt()).hasValue(3);
    assertThat(running.steps())
        .extracting(step -> step.standing().getAmount().toPlainString())
        .containsExactly("-28.30", "-17.45", "0.00", "3.00");
    assertThat(running.total()).isEqualTo(Money.parse("USD 53.00"));
    assertThat(running.gain().money()).isEqualTo(Money.parse("USD 3.00"));
    assertThat(running.gain().percentOfCost().orElseThrow()).isEqualByComparingTo("6");
  }

  @Test
  void aLotMayNotHavePaidYet() {
    RunningTotal running = running("50.00", "49.99");
    assertThat(running.paidAt()).isEmpty();
    assertThat(running.gain().money()).isEqualTo(Money.parse("USD -0.01"));
  }

  @Test
  void aLotNotYetOpenedStandsAtItsCost() {
    RunningTotal running = running("50.00");
    assertThat(running.total().isZero()).isTrue();
    assertThat(running.gain().money()).isEqualTo(Money.parse("USD -50.00"));
    assertThat(running.paidAt()).isEmpty();
  }

  @Test
  void aGiftHasPaidForItselfBeforeTheFirstPiece() {
    assertThat(running("0.00", "1.00").paidAt()).hasValue(0);
  }

  @Test
  void refusesNegativeAmounts() {
    assertThatThrownBy(() -> running("-1.00")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> running("1.00", "-1.00")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () -> RunningTotal.of(Money.parse("USD 1.00"), List.of(Money.parse("EUR 1.00"))))
        .isInstanceOf(org.joda.money.CurrencyMismatchException.class);
  }
}
