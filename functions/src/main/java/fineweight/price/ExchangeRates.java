package fineweight.price;

import fineweight.money.Amounts;
import fineweight.quantity.Decimals;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/**
 * The collector's own rates of one day between currencies, named by their ISO 4217 codes. A rate
 * counts exactly in the direction it was given; the other direction divides by it, to 34
 * significant digits. Two currencies without a rate of their own are converted through the base.
 * Immutable.
 */
public final class ExchangeRates {
  private final CurrencyUnit base;
  private final LocalDate date;
  private final Map<CurrencyUnit, Ratio> toBase;

  /** One unit of a currency is {@code times / per} units of the base. */
  private record Ratio(BigDecimal times, BigDecimal per) {}

  private ExchangeRates(CurrencyUnit base, LocalDate date, Map<CurrencyUnit, Ratio> toBase) {
    this.base = Objects.requireNonNull(base, "base");
    this.date = Objects.requireNonNull(date, "date");
    this.toBase = Map.copyOf(toBase);
  }

  /** No rates yet: only the base itself can be converted. */
  public static ExchangeRates of(CurrencyUnit base, LocalDate date) {
    return new ExchangeRates(base, date, Map.of());
  }

  /**
   * The currency of an ISO 4217 code, in upper or lower case.
   *
   * @return empty if no currency has this code
   */
  public static Optional<CurrencyUnit> currency(String code) {
    try {
      return Optional.of(CurrencyUnit.of(code.strip().toUpperCase(Locale.ROOT)));
    } catch (IllegalCurrencyException unknown) {
      return Optional.empty();
    }
  }

  /**
   * These rates and one more: so many units of the base for one of the currency, such as 0.73 (USD)
   * for one CAD. It replaces an earlier rate of the same currency.
   *
   * @param baseForOne more than zero
   * @throws IllegalArgumentException if the rate is not more than zero or the currency is the base
   */
  public ExchangeRates withBaseForOne(CurrencyUnit currency, BigDecimal baseForOne) {
    return with(currency, new Ratio(positive(baseForOne), BigDecimal.ONE));
  }

  /**
   * These rates and one more, given the other way: so many units of the currency for one of the
   * base, such as 150 (JPY) for one USD.
   *
   * @param forOneBase more than zero
   * @throws IllegalArgumentException if the rate is not more than zero or the currency is the base
   */
  public ExchangeRates withUnitsForOneBase(CurrencyUnit currency, BigDecimal forOneBase) {
    return with(currency, new Ratio(BigDecimal.ONE, positive(forOneBase)));
  }

  private ExchangeRates with(CurrencyUnit currency, Ratio ratio) {
    if (currency.equals(base)) {
      throw new IllegalArgumentException("the rate of the base currency " + base + " is 1");
    }
    Map<CurrencyUnit, Ratio> more = new LinkedHashMap<>(toBase);
    more.put(currency, ratio);
    return new ExchangeRates(base, date, more);
  }

  private static BigDecimal positive(BigDecimal rate) {
    if (rate.signum() <= 0) {
      throw new IllegalArgumentException(
          "a rate must be more than zero, not " + rate.toPlainString());
    }
    return Decimals.normal(rate);
  }

  public CurrencyUnit base() {
    return base;
  }

  /** The day the rates are of. */
  public LocalDate date() {
    return date;
  }

  /**
   * An amount in another currency, not rounded.
   *
   * @return empty if a rate is missing
   */
  public Optional<BigMoney> convert(BigMoney amount, CurrencyUnit wanted) {
    CurrencyUnit given = amount.getCurrencyUnit();
    if (given.equals(wanted)) {
      return Optional.of(Amounts.normal(amount));
    }
    return ratio(given)
        .flatMap(from -> ratio(wanted).map(to -> converted(amount, from, to, wanted)));
  }

  /** One division at the end, and none where the rates allow it. */
  private static BigMoney converted(BigMoney amount, Ratio from, Ratio to, CurrencyUnit wanted) {
    BigDecimal times = amount.getAmount().multiply(from.times()).multiply(to.per());
    BigDecimal per = from.per().multiply(to.times());
    BigDecimal result =
        per.compareTo(BigDecimal.ONE) == 0 ? times : times.divide(per, Decimals.DIVISION);
    return Amounts.normal(BigMoney.of(wanted, result));
  }

  private Optional<Ratio> ratio(CurrencyUnit currency) {
    return currency.equals(base)
        ? Optional.of(new Ratio(BigDecimal.ONE, BigDecimal.ONE))
        : Optional.ofNullable(toBase.get(currency));
  }
}
