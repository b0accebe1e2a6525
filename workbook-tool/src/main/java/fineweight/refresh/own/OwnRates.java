package fineweight.refresh.own;

import fineweight.column.RowText;
import fineweight.price.ExchangeRates;
import fineweight.refresh.inventory.RowMoney;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Reads a list of exchange rates. */
final class OwnRates {
  private final OwnTable table;
  private final List<String> remarks;

  OwnRates(OwnTable table, List<String> remarks) {
    this.table = table;
    this.remarks = remarks;
  }

  /**
   * @param prices the currency of the prices: that of the rates where no heading names another
   * @param date where no line has one
   */
  ExchangeRates read(CurrencyUnit prices, LocalDate date) {
    CurrencyUnit base =
        table
            .named(ListKind.RATES, "rate")
            .or(() -> table.named(ListKind.RATES, "for one"))
            .flatMap(ExchangeRates::currency)
            .orElse(prices);
    ExchangeRates rates = ExchangeRates.of(base, oldest(date));
    for (RowText line : table.rows()) {
      rates = with(rates, line);
    }
    return rates;
  }

  /** Rates are as old as the oldest line. */
  private LocalDate oldest(LocalDate otherwise) {
    return table.rows().stream()
        .map(line -> OwnPrices.day(table.at(line, "day")))
        .flatMap(Optional::stream)
        .min(LocalDate::compareTo)
        .orElse(otherwise);
  }

  private ExchangeRates with(ExchangeRates rates, RowText line) {
    String code = table.at(line, "currency");
    String rate = table.at(line, "rate");
    String forOne = table.at(line, "for one");
    if (code.isEmpty() || (rate.isEmpty() && forOne.isEmpty())) {
      return rates;
    }
    Optional<CurrencyUnit> currency = ExchangeRates.currency(code);
    Optional<BigDecimal> figure =
        RowMoney.amount(rate.isEmpty() ? forOne : rate).filter(number -> number.signum() > 0);
    if (currency.isEmpty()) {
      return leftOut(
          rates, line, "\"" + code + "\" is no currency; write its ISO 4217 code, such as EUR");
    }
    if (figure.isEmpty()) {
      return leftOut(
          rates, line, "\"" + rate + forOne + "\" is no rate above zero; write it as 1.08");
    }
    if (currency.get().equals(rates.base())) {
      return figure.get().compareTo(BigDecimal.ONE) == 0
          ? rates
          : leftOut(rates, line, code + " is the currency of the rates itself; delete the line");
    }
    return rate.isEmpty()
        ? rates.withUnitsForOneBase(currency.get(), figure.get())
        : rates.withBaseForOne(currency.get(), figure.get());
  }

  private ExchangeRates leftOut(ExchangeRates rates, RowText line, String sentence) {
    remarks.add(table.remark(line, sentence));
    return rates;
  }
}
