package fineweight.lot;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

class CostSharesProperties {
  @Property
  void sharesAddUpToTheCostAndNoneIsNegative(
      @ForAll @LongRange(min = 0, max = 5_000_000) long cents,
      @ForAll @Size(min = 1, max = 30)
          List<@BigRange(min = "0", max = "9000") @Scale(6) BigDecimal> amounts) {
    Money cost = Money.ofMinor(CurrencyUnit.USD, cents);
    List<BigMoney> worths =
        amounts.stream().map(amount -> BigMoney.of(CurrencyUnit.USD, amount)).toList();
    List<Integer> counts = Collections.nCopies(worths.size(), 1);
    for (CostShares shares :
        List.of(CostShares.byWorth(cost, worths, counts), CostShares.equally(cost, counts))) {
      assertThat(Money.total(shares.shares())).isEqualTo(cost);
      assertThat(shares.shares()).noneMatch(Money::isNegative);
    }
  }
}
