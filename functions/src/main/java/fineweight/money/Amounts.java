package fineweight.money;

import fineweight.quantity.Decimals;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * The one way to hold, compare and round an amount. Inside, amounts are exact; they are rounded
 * once, at the cell.
 */
public final class Amounts {
  private static final BigDecimal HUNDRED = new BigDecimal("100");

  private Amounts() {}

  /** The same amount without trailing zeros, so that equal amounts are equal objects. */
  public static BigMoney normal(BigMoney amount) {
    Objects.requireNonNull(amount, "amount");
    return BigMoney.of(amount.getCurrencyUnit(), Decimals.normal(amount.getAmount()));
  }

  /** The amount as a cell shows it: rounded half up to the currency's smallest unit. */
  public static Money atCell(BigMoney amount) {
    return amount.toMoney(RoundingMode.HALF_UP);
  }

  /**
   * A percentage of an amount, not rounded.
   *
   * @param percent per cent; may exceed 100
   */
  public static BigMoney percentOf(BigMoney amount, BigDecimal percent) {
    return normal(amount.multipliedBy(percent.movePointLeft(2)));
  }

  /**
   * How much {@code part} is of {@code whole}, in per cent, to 34 significant digits.
   *
   * @throws ArithmeticException if the whole is zero
   */
  public static BigDecimal percent(BigMoney part, BigMoney whole) {
    requireSame(whole.getCurrencyUnit(), part, "part");
    return Decimals.normal(
        part.getAmount().multiply(HUNDRED).divide(whole.getAmount(), Decimals.DIVISION));
  }

  public static BigMoney higher(BigMoney one, BigMoney other) {
    return one.isLessThan(other) ? other : one;
  }

  public static BigMoney lower(BigMoney one, BigMoney other) {
    return other.isLessThan(one) ? other : one;
  }

  /** The amount, or zero where it is negative. */
  public static BigMoney notNegative(BigMoney amount) {
    return amount.isNegative() ? BigMoney.zero(amount.getCurrencyUnit()) : amount;
  }

  /**
   * Refuses an amount in another currency.
   *
   * @param name what the amount is, for the message
   * @throws IllegalArgumentException if the amount is in another currency
   */
  public static void requireSame(CurrencyUnit currency, BigMoney amount, String name) {
    if (!amount.getCurrencyUnit().equals(currency)) {
      throw new IllegalArgumentException(
          name + " is in " + amount.getCurrencyUnit() + ", not in " + currency);
    }
  }

  /**
   * The percentage without trailing zeros.
   *
   * @param name what the percentage is, for the message
   * @throws IllegalArgumentException if it lies outside 0 to 100
   */
  public static BigDecimal requirePercent(BigDecimal percent, String name) {
    if (percent.signum() < 0 || percent.compareTo(HUNDRED) > 0) {
      throw new IllegalArgumentException(
          name + " lies between 0 and 100 per cent, not " + percent.toPlainString());
    }
    return Decimals.normal(percent);
  }

  /** The words of an amount as a person writes them, such as {@code 12.50 USD}. */
  public static String words(BigMoney amount) {
    return words(atCell(amount));
  }

  /** The words of an amount as a person writes them, such as {@code 12.50 USD}. */
  public static String words(Money amount) {
    return amount.getAmount().toPlainString() + " " + amount.getCurrencyUnit().getCode();
  }
}
