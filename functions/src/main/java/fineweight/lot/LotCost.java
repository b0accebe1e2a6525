package fineweight.lot;

import java.util.List;
import java.util.Objects;
import org.joda.money.Money;

/**
 * What a lot cost, part by part, all zero or more and in one currency. Immutable.
 *
 * @param price the hammer or asking price
 * @param premium the buyer's premium
 * @param tax the tax on it
 * @param postage postage and insurance
 */
public record LotCost(Money price, Money premium, Money tax, Money postage) {
  /**
   * @throws IllegalArgumentException if a part is negative
   */
  public LotCost {
    for (Money part : List.of(price, premium, tax, postage)) {
      if (Objects.requireNonNull(part, "part").isNegative()) {
        throw new IllegalArgumentException("a part of the cost is negative: " + part);
      }
    }
  }

  /** A lot that cost its price and nothing else. */
  public static LotCost plain(Money price) {
    Money zero = Money.zero(price.getCurrencyUnit());
    return new LotCost(price, zero, zero, zero);
  }

  public Money total() {
    return price.plus(premium).plus(tax).plus(postage);
  }
}
