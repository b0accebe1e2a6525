package fineweight.workbook.xlsx.style;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.xlsx.style.DateFormats.Shows;
import org.apache.poi.ss.usermodel.DateUtil;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DateFormatsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "yyyy|YEAR",
        "YY|YEAR",
        "yyyy\"y\"|YEAR",
        "[$-409]yyyy|YEAR",
        "dd.mm.yyyy|DATE",
        "mmm|DATE",
        "[h]:mm|DATE",
        "General|NUMBER",
        "0.00\" days\"|NUMBER",
        "[Red]0.0;[Blue]-0.0|NUMBER",
        "#,##0\\d|NUMBER",
        "0;yyyy|NUMBER",
        "_d0_m|NUMBER",
        "0.00E+00|NUMBER"
      })
  void readsFormatCodes(String code, Shows shows) {
    assertThat(DateFormats.custom(code)).isEqualTo(shows);
  }

  /** Another reader's opinion. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 13, 14, 15, 17, 22, 37, 44, 45, 47, 48, 49})
  void agreesOnBuiltInFormats(int id) {
    assertThat(DateFormats.builtIn(id) == Shows.DATE).isEqualTo(DateUtil.isInternalDateFormat(id));
  }
}
