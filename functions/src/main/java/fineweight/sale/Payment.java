package fineweight.sale;

import fineweight.money.Amounts;
import java.math.BigDecimal;
import java.util.Objects;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What the handling of the payment takes: per cent of all that the buyer pays, postage included,
 * and a fixed sum. The percentage is rounded half up to the cent. Immutable.
 *
 * @param percent 0 to 100
 * @param fixed zero or more
 */
public record Payment(BigDecimal percent, Money fixed) {
  /**
   * @throws IllegalArgumentException if a figure is out of range
   */
  public Payment {
    percent = Amounts.requirePercent(percent, "the payment share");
    if (Objects.requireNonNull(fixed, "fixed").isNegative()) {
      throw new IllegalArgumentException("the fixed part is zero or more, not " + fixed);
    }
  }

  /** Paid in cash. */
  public static Payment none(CurrencyUnit currency) {
    return new Payment(BigDecimal.ZERO, Money.zero(currency));
  }

  /**
   * @param received price and postage
   */
  Money of(Money received) {
    return Amounts.atCell(BigMoney.of(received.getCurrencyUnit(), exact(received.getAmount())));
  }

  BigDecimal exact(BigDecimal received) {
    return received.multiply(percent.movePointLeft(2)).add(fixed.getAmount());
  }
}
