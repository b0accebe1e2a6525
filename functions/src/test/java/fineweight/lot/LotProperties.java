package fineweight.lot;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.valuation.Piece;
import fineweight.valuation.Samples;
import fineweight.valuation.Valuer;
import fineweight.valuation.WorthRange;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

class LotProperties {
  private static final Valuer VALUER = new Valuer(Samples.SPOTS);

  @Property
  void theRunningTotalEndsAtTheLotTotalInAnyOrder(
      @ForAll @Size(max = 25) List<@IntRange(min = 1, max = 60) Integer> counts,
      @ForAll Random random) {
    List<LotTotals.Row> rows = new ArrayList<>();
    for (int count : counts) {
      WorthRange worth = WorthRange.settled(VALUER.value(Piece.of(Samples.DIME).times(count)));
      rows.add(new LotTotals.Row(worth, Money.parse("USD 1.00"), false));
    }
    LotTotals totals = LotTotals.of(CurrencyUnit.USD, rows);
    Collections.shuffle(rows, random);
    RunningTotal running =
        RunningTotal.of(
            totals.cost(), rows.stream().map(row -> row.range().low().worth().atCell()).toList());
    assertThat(running.total()).isEqualTo(totals.least().worth());
    assertThat(LotTotals.of(CurrencyUnit.USD, rows)).isEqualTo(totals);
    assertThat(running.gain()).isEqualTo(totals.leastGain());
  }

  @Property
  void theLotHasPaidExactlyWhereItStandsAtZeroOrAbove(
      @ForAll @IntRange(min = 1, max = 5000) int cost,
      @ForAll @Size(max = 30) List<@IntRange(min = 0, max = 900) Integer> worths) {
    RunningTotal running =
        RunningTotal.of(
            Money.ofMinor(CurrencyUnit.USD, cost),
            worths.stream().map(cents -> Money.ofMinor(CurrencyUnit.USD, cents)).toList());
    for (RunningTotal.Step step : running.steps()) {
      boolean paid = running.paidAt().isPresent() && step.number() >= running.paidAt().getAsInt();
      assertThat(step.standing().isNegative()).isEqualTo(!paid);
    }
  }
}
