package fineweight.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmountsTest {
  @Test
  void equalAmountsAreEqualObjectsOnceNormal() {
    assertThat(Amounts.normal(BigMoney.parse("USD 1.50")))
        .isEqualTo(Amounts.normal(BigMoney.parse("USD 1.5")));
    assertThat(Amounts.normal(BigMoney.parse("USD 0.00")))
        .isEqualTo(Amounts.normal(BigMoney.parse("USD 0")));
  }

  @ParameterizedTest
  @CsvSource({
    "USD 2.345, USD 2.35",
    "USD 2.344999, USD 2.34",
    "USD -2.345, USD -2.35",
    "JPY 10.5, JPY 11",
    "KWD 1.0005, KWD 1.001",
  })
  void theCellRoundsHalfUpToTheSmallestUnitOfTheCurrency(String exact, String shown) {
    assertThat(Amounts.atCell(BigMoney.parse(exact))).isEqualTo(Money.parse(shown));
  }

  @Test
  void percentagesAreTakenAndFoundExactly() {
    BigMoney price = BigMoney.parse("USD 132978.72");
    assertThat(Amounts.percentOf(price, new BigDecimal("6")).getAmount())
        .isEqualByComparingTo("7978.7232");
    assertThat(Amounts.percent(BigMoney.parse("USD 2"), BigMoney.parse("USD 8")))
        .isEqualByComparingTo("25");
    assertThatThrownBy(() -> Amounts.percent(BigMoney.parse("USD 2"), BigMoney.parse("USD 0")))
        .isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> Amounts.percent(BigMoney.parse("EUR 2"), BigMoney.parse("USD 8")))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void comparesAmountsByValue() {
    BigMoney one = BigMoney.parse("USD 1.0");
    BigMoney two = BigMoney.parse("USD 2");
    assertThat(Amounts.higher(one, two)).isEqualTo(two);
    assertThat(Amounts.higher(two, one)).isEqualTo(two);
    assertThat(Amounts.lower(one, two)).isEqualTo(one);
    assertThat(Amounts.lower(two, one)).isEqualTo(one);
    assertThat(Amounts.notNegative(BigMoney.parse("USD -3")).isZero()).isTrue();
    assertThat(Amounts.notNegative(two)).isEqualTo(two);
  }

  @Test
  void refusesAnotherCurrencyByName() {
    assertThatThrownBy(
            () -> Amounts.requireSame(CurrencyUnit.USD, BigMoney.parse("EUR 1"), "the face value"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the face value is in EUR, not in USD");
  }

  @ParameterizedTest
  @CsvSource({"-0.01", "100.01"})
  void refusesAPercentageOutsideZeroToHundred(BigDecimal percent) {
    assertThatThrownBy(() -> Amounts.requirePercent(percent, "the wear"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("the wear")
        .hasMessageContaining(percent.toPlainString());
  }

  @Test
  void writesAnAmountWithItsCode() {
    assertThat(Amounts.words(BigMoney.parse("USD 12.5"))).isEqualTo("12.50 USD");
    assertThat(Amounts.words(Money.parse("JPY 300"))).isEqualTo("300 JPY");
  }
}
