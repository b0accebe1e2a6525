package fineweight.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** The rates are invented, save the fixed one whose source is named. */
class ExchangeRatesTest {
  private static final LocalDate DAY = LocalDate.of(2026, 1, 2);
  private static final ExchangeRates RATES =
      ExchangeRates.of(CurrencyUnit.USD, DAY)
          .withBaseForOne(CurrencyUnit.CAD, new BigDecimal("0.73"))
          .withUnitsForOneBase(CurrencyUnit.JPY, new BigDecimal("150"));

  private static BigDecimal convert(ExchangeRates rates, String amount, CurrencyUnit wanted) {
    return rates.convert(BigMoney.parse(amount), wanted).orElseThrow().getAmount();
  }

  @Test
  void aRateIsExactInTheDirectionItWasGiven() {
    assertThat(convert(RATES, "CAD 10.01", CurrencyUnit.USD)).isEqualByComparingTo("7.3073");
    assertThat(convert(RATES, "USD 3", CurrencyUnit.JPY)).isEqualByComparingTo("450");
  }

  @Test
  void theOtherDirectionDividesByIt() {
    assertThat(convert(RATES, "USD 7.3073", CurrencyUnit.CAD)).isEqualByComparingTo("10.01");
    assertThat(convert(RATES, "JPY 100", CurrencyUnit.USD))
        .isEqualByComparingTo("0.6666666666666666666666666666666667");
  }

  @Test
  void twoOthersAreConvertedThroughTheBase() {
    assertThat(convert(RATES, "CAD 100", CurrencyUnit.JPY)).isEqualByComparingTo("10950");
    assertThat(convert(RATES, "JPY 10950", CurrencyUnit.CAD)).isEqualByComparingTo("100");
  }

  /**
   * Source: Council Regulation (EC) No 2866/98, article 1: one euro is 1.95583 German marks and
   * 2.20371 Dutch guilders. Regulation (EC) No 1103/97, article 4: the rates are used either way,
   * inverse rates derived from them are not, and one national unit goes into another through the
   * euro.
   */
  @Test
  void theFixedRatesOfTheEuro() {
    CurrencyUnit mark = ExchangeRates.currency("DEM").orElseThrow();
    CurrencyUnit guilder = ExchangeRates.currency("NLG").orElseThrow();
    ExchangeRates euro =
        ExchangeRates.of(CurrencyUnit.EUR, DAY)
            .withUnitsForOneBase(mark, new BigDecimal("1.95583"))
            .withUnitsForOneBase(guilder, new BigDecimal("2.20371"));
    assertThat(convert(euro, "EUR 100", mark)).isEqualByComparingTo("195.583");
    assertThat(convert(euro, "DEM 195.583", CurrencyUnit.EUR)).isEqualByComparingTo("100");
    assertThat(convert(euro, "DEM 195.583", guilder)).isEqualByComparingTo("220.371");
  }

  @Test
  void theSameCurrencyNeedsNoRate() {
    assertThat(convert(RATES, "CHF 5.50", CurrencyUnit.CHF)).isEqualByComparingTo("5.5");
    assertThat(convert(RATES, "USD 5.50", CurrencyUnit.USD)).isEqualByComparingTo("5.5");
  }

  @Test
  void aMissingRateGivesNothing() {
    assertThat(RATES.convert(BigMoney.parse("CHF 5"), CurrencyUnit.USD)).isEmpty();
    assertThat(RATES.convert(BigMoney.parse("USD 5"), CurrencyUnit.CHF)).isEmpty();
  }

  @Test
  void aLaterRateReplacesAnEarlierOne() {
    ExchangeRates changed = RATES.withUnitsForOneBase(CurrencyUnit.CAD, new BigDecimal("1.25"));
    assertThat(convert(changed, "CAD 10", CurrencyUnit.USD)).isEqualByComparingTo("8");
    assertThat(convert(RATES, "CAD 10", CurrencyUnit.USD)).isEqualByComparingTo("7.3");
  }

  @Test
  void knowsCodesOfIso4217() {
    assertThat(ExchangeRates.currency(" eur ")).contains(CurrencyUnit.EUR);
    assertThat(ExchangeRates.currency("XAG")).isPresent();
    assertThat(ExchangeRates.currency("ZZZ")).isEmpty();
    assertThat(ExchangeRates.currency("")).isEmpty();
    assertThat(RATES.base()).isEqualTo(CurrencyUnit.USD);
    assertThat(RATES.date()).isEqualTo(DAY);
  }

  @Test
  void refusesRatesThatCannotBe() {
    assertThatThrownBy(() -> RATES.withBaseForOne(CurrencyUnit.CHF, BigDecimal.ZERO))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> RATES.withUnitsForOneBase(CurrencyUnit.CHF, new BigDecimal("-1")))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> RATES.withBaseForOne(CurrencyUnit.USD, BigDecimal.ONE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("USD");
  }

  @Test
  void anAmountOfAnyLengthStaysExactInTheDirectionOfTheRate() {
    String digits = "1234567890123456789012345678901234567890.01";
    assertThat(convert(RATES, "CAD " + digits, CurrencyUnit.USD))
        .isEqualByComparingTo(new BigDecimal(digits).multiply(new BigDecimal("0.73")));
  }
}
