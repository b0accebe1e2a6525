package fineweight.price;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.money.Amounts;
import java.math.BigDecimal;
import java.time.LocalDate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

class ExchangeRatesProperties {
  @Property
  void thereAndBackAgainIsTheSameCent(
      @ForAll @BigRange(min = "0.0001", max = "20000") @Scale(6) BigDecimal rate,
      @ForAll @BigRange(min = "0", max = "1000000") @Scale(2) BigDecimal amount) {
    ExchangeRates rates =
        ExchangeRates.of(CurrencyUnit.USD, LocalDate.of(2026, 1, 2))
            .withBaseForOne(CurrencyUnit.CHF, rate);
    BigMoney dollars = BigMoney.of(CurrencyUnit.USD, amount);
    BigMoney back =
        rates
            .convert(dollars, CurrencyUnit.CHF)
            .flatMap(francs -> rates.convert(francs, CurrencyUnit.USD))
            .orElseThrow();
    assertThat(Amounts.atCell(back.rounded(12, java.math.RoundingMode.HALF_UP)))
        .isEqualTo(Amounts.atCell(dollars));
  }
}
