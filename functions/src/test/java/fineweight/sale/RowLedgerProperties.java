package fineweight.sale;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

class RowLedgerProperties {
  @Property
  void theCostsOfAllStatesAddUpToTheCostOfTheRow(
      @ForAll @LongRange(min = 0, max = 100_000) long cents,
      @ForAll @Size(max = 8) List<@IntRange(min = 1, max = 9) Integer> parts,
      @ForAll @IntRange(min = 1, max = 20) int left) {
    int pieces = parts.stream().mapToInt(Integer::intValue).sum() + left;
    Money cost = Money.ofMinor(CurrencyUnit.USD, cents);
    RowLedger row = RowLedger.untouched("1", pieces, cost);
    for (int i = 0; i < parts.size(); i++) {
      row =
          row.with(
              i % 2 == 0
                  ? RowLedger.Part.kept(parts.get(i))
                  : RowLedger.Part.sold(parts.get(i), LocalDate.of(2026, 1, 2), cost));
    }
    Money sum = Money.zero(CurrencyUnit.USD);
    int counted = 0;
    for (SaleState state : SaleState.values()) {
      assertThat(row.cost(state).isNegative()).isFalse();
      sum = sum.plus(row.cost(state));
      counted += row.pieces(state);
    }
    assertThat(sum).isEqualTo(cost);
    assertThat(counted).isEqualTo(pieces);
  }
}
