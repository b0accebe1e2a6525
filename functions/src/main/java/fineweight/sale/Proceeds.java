package fineweight.sale;

import java.util.Objects;
import org.joda.money.Money;

/**
 * One sale, part by part. Immutable.
 *
 * @param price what the buyer pays for the piece
 * @param commission the seller's commission
 * @param fixed the fixed fee
 * @param payment what the payment takes
 * @param handling postage in, postage out and packing
 */
public record Proceeds(
    Money price, Money commission, Money fixed, Money payment, Handling handling) {
  public Proceeds {
    Objects.requireNonNull(price, "price");
    Objects.requireNonNull(handling, "handling");
  }

  /** Commission, fixed fee and payment share together. */
  public Money fees() {
    return commission.plus(fixed).plus(payment);
  }

  /** What is left after fees, postage and packing; may be negative. */
  public Money net() {
    return price
        .plus(handling.charged())
        .minus(fees())
        .minus(handling.paid())
        .minus(handling.packing());
  }
}
