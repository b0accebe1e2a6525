package fineweight.sale;

import java.util.List;
import java.util.Objects;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Postage and packing of one sale, all zero or more. Immutable.
 *
 * @param charged what the buyer pays for postage, beside the price
 * @param paid what the seller pays for it
 * @param packing holder, envelope, box
 */
public record Handling(Money charged, Money paid, Money packing) {
  /**
   * @throws IllegalArgumentException if an amount is negative
   */
  public Handling {
    for (Money part : List.of(charged, paid, packing)) {
      if (Objects.requireNonNull(part, "part").isNegative()) {
        throw new IllegalArgumentException("postage and packing are zero or more, not " + part);
      }
    }
  }

  /** Handed over the table. */
  public static Handling none(CurrencyUnit currency) {
    Money zero = Money.zero(currency);
    return new Handling(zero, zero, zero);
  }
}
