package fineweight.money;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What is left of a worth or of proceeds after the cost; negative where it falls short. Immutable.
 *
 * @param money worth less cost
 * @param percentOfCost the same in per cent of the cost, to 34 significant digits; empty where the
 *     cost is zero
 */
public record Gain(Money money, Optional<BigDecimal> percentOfCost) {
  public Gain {
    Objects.requireNonNull(money, "money");
    Objects.requireNonNull(percentOfCost, "percentOfCost");
  }

  /**
   * The gain of a worth, or of proceeds, over a cost.
   *
   * @throws org.joda.money.CurrencyMismatchException if the two are in different currencies
   */
  public static Gain of(Money worth, Money cost) {
    Money money = worth.minus(cost);
    return new Gain(
        money,
        cost.isZero()
            ? Optional.empty()
            : Optional.of(Amounts.percent(money.toBigMoney(), cost.toBigMoney())));
  }
}
