package fineweight.spot;

import fineweight.metal.Metal;
import fineweight.quantity.Decimals;
import fineweight.quantity.Mass;
import fineweight.quantity.MassUnit;
import java.math.BigDecimal;
import java.util.Objects;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * The price of one metal: an amount of money for one unit of mass. The unit is part of the price.
 * Immutable.
 *
 * @param metal whose price it is
 * @param amount money for one unit, more than zero, trailing zeros removed
 * @param currency the currency of the amount
 * @param unit the unit of mass that the amount buys
 */
public record SpotPrice(Metal metal, BigDecimal amount, CurrencyUnit currency, MassUnit unit) {
  /**
   * @throws IllegalArgumentException if the amount is zero or negative
   */
  public SpotPrice {
    Objects.requireNonNull(metal, "metal");
    Objects.requireNonNull(currency, "currency");
    Objects.requireNonNull(unit, "unit");
    amount = Decimals.normal(Objects.requireNonNull(amount, "amount"));
    if (amount.signum() <= 0) {
      throw new IllegalArgumentException(
          "the price of "
              + metal.word()
              + " must be more than zero, not "
              + amount.toPlainString());
    }
  }

  /**
   * Money for one troy ounce, to 34 significant digits (exact when the price is per troy ounce).
   */
  public BigDecimal perTroyOunce() {
    if (unit == MassUnit.TROY_OUNCE) {
      return amount;
    }
    return Decimals.normal(
        amount.multiply(MassUnit.TROY_OUNCE.grams()).divide(unit.grams(), Decimals.DIVISION));
  }

  /** The value of a mass of this metal, not rounded to the currency's places. */
  public BigMoney valueOf(Mass mass) {
    return BigMoney.of(
        currency,
        Decimals.normal(mass.grams().multiply(amount).divide(unit.grams(), Decimals.DIVISION)));
  }
}
