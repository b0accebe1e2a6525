package fineweight.sale;

import fineweight.money.WantedGain;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What selling in one place costs, as data of the collector's own. All amounts are in one currency.
 * Immutable.
 *
 * @param name his word for the place
 * @param commission per cent of the price
 * @param fixed the same for every sale, zero or more
 * @param payment what the payment takes
 * @param handling postage in, postage out and packing
 */
public record FeeSchedule(
    String name, Commission commission, Money fixed, Payment payment, Handling handling) {
  /**
   * @throws IllegalArgumentException if the fixed fee is negative
   * @throws org.joda.money.CurrencyMismatchException if the amounts are in different currencies
   */
  public FeeSchedule {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(commission, "commission");
    // The sum refuses amounts of different currencies.
    Money all =
        Money.total(
            fixed, payment.fixed(), handling.charged(), handling.paid(), handling.packing());
    if (fixed.isNegative() || all.isNegative()) {
      throw new IllegalArgumentException("the fixed fee is zero or more, not " + fixed);
    }
  }

  /** Sold over the table: the price is what is left. */
  public static FeeSchedule none(CurrencyUnit currency) {
    return flat("over the table", BigDecimal.ZERO, currency);
  }

  /** A commission and nothing else. */
  public static FeeSchedule flat(String name, BigDecimal percent, CurrencyUnit currency) {
    return new FeeSchedule(
        name,
        Commission.flat(percent),
        Money.zero(currency),
        Payment.none(currency),
        Handling.none(currency));
  }

  /**
   * What a sale at a price brings.
   *
   * @param price zero or more
   * @throws IllegalArgumentException if the price is negative
   */
  public Proceeds at(Money price) {
    if (price.isNegative()) {
      throw new IllegalArgumentException("a price is zero or more, not " + price);
    }
    Money received = price.plus(handling.charged());
    return new Proceeds(
        price,
        commission.of(commission.onPostage() ? received : price),
        fixed,
        payment.of(received),
        handling);
  }

  /** What is left of a price after fees, postage and packing. */
  public Money net(Money price) {
    return at(price).net();
  }

  /** The lowest price whose net brings the cost back. */
  public Optional<LeastPrice> leastPrice(Money cost) {
    return leastPrice(cost, WantedGain.none());
  }

  /**
   * The lowest price that earns what is wanted, exact to the cent: no lower price earns it.
   *
   * @param cost what the piece cost, zero or more
   * @param wanted a margin is taken of the price, a markup of the cost
   * @return empty if no price earns it, because fees and margin together take all of it
   * @throws IllegalArgumentException if the cost is negative
   */
  public Optional<LeastPrice> leastPrice(Money cost, WantedGain wanted) {
    if (cost.isNegative()) {
      throw new IllegalArgumentException("a cost is zero or more, not " + cost);
    }
    return new PriceSearch(this, cost, wanted).lowest();
  }

  /** What is left before fees are rounded. */
  BigDecimal exactNet(BigDecimal price) {
    BigDecimal received = price.add(handling.charged().getAmount());
    return received
        .subtract(commission.exact(commission.onPostage() ? received : price))
        .subtract(fixed.getAmount())
        .subtract(payment.exact(received))
        .subtract(handling.paid().getAmount())
        .subtract(handling.packing().getAmount());
  }
}
