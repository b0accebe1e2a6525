package fineweight.clue.word;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberTextProperties {
  @Property
  void whatIsPrintedIsRead(
      @ForAll @BigRange(min = "-99999999", max = "99999999") @Scale(2) BigDecimal number) {
    assertRead(number.toPlainString(), number);
    assertRead(number.setScale(2).toPlainString().replace('.', ','), number);
  }

  /** Grouped with two places behind the point, as price lists of many lands print it. */
  @Property
  void groupsOfThreeAreRead(
      @ForAll @BigRange(min = "0", max = "99999999") @Scale(2) BigDecimal number) {
    assertRead(format(number, ',', '.'), number);
    assertRead(format(number, '.', ','), number);
    assertRead(format(number, '\u00a0', ','), number);
    assertRead(format(number, '\'', '.'), number);
  }

  private static String format(BigDecimal number, char group, char point) {
    DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
    symbols.setGroupingSeparator(group);
    symbols.setDecimalSeparator(point);
    return new DecimalFormat("#,##0.00", symbols).format(number);
  }

  private static void assertRead(String text, BigDecimal number) {
    assertThat(NumberText.read(text))
        .as(text)
        .hasValueSatisfying(read -> assertThat(read).isEqualByComparingTo(number));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1,250.00|1250", "1.690,00|1690", "12,5|12.5", "1 250|1250", "1,250|1250", "0,250|0.250",
        ".5|0.5", "5.|5", "12.500|12.500", "1.234.567|1234567", "+3|3", "-2|-2"
      })
  void byHand(String text, BigDecimal number) {
    assertRead(text, number);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "-", ".", ",", "ten", "1e5", "1,2,3", "12 oz", "1.2.3", "1-2"})
  void isNoNumber(String text) {
    assertThat(NumberText.read(text)).as(text).isEmpty();
  }
}
