package fineweight.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;

class LabelWordingTest {
  private static final Map<LabelField, String> PIECE =
      Map.of(
          LabelField.DENOMINATION, "dollar",
          LabelField.COUNTRY, "United States",
          LabelField.DATE, "1921",
          LabelField.METAL, "silver 900",
          LabelField.NUMBER, "7");

  @Test
  void whatIsNotKnownLeavesNoGapAndNoLoneComma() {
    assertThat(LabelWording.read(LabelWording.USUAL).of(PIECE).lines())
        .containsExactly("dollar", "United States 1921", "silver 900", "No 7");
    assertThat(LabelWording.read("{type}, {grade}; {date} , {holder}").of(PIECE).lines())
        .containsExactly("1921");
  }

  @Test
  void wordsWithoutAFieldStayAndALineOfEmptyFieldsGoes() {
    assertThat(LabelWording.read("My box|Grade {grade}|{number}").of(PIECE).lines())
        .containsExactly("My box", "7");
  }

  @Test
  void faultsAreSaidEvenIfTheWordingForgetsThem() {
    Map<LabelField, String> holed =
        Map.of(
            LabelField.NUMBER,
            "7",
            LabelField.FAULTS,
            "holed, cleaned",
            LabelField.PRICE,
            "5.00 USD");
    assertThat(LabelWording.read("{number}").of(holed).lines())
        .containsExactly("7", "holed, cleaned", "5.00 USD");
    assertThat(LabelWording.read("{number} {faults}").of(holed).lines())
        .containsExactly("7 holed, cleaned", "5.00 USD");
  }

  @Test
  void aValueIsNoPattern() {
    Map<LabelField, String> odd = Map.of(LabelField.TYPE, "$1 \\ {number}", LabelField.NUMBER, "7");
    assertThat(LabelWording.read("{type}").of(odd).lines()).containsExactly("$1 \\ {number}");
  }

  @Test
  void anUnknownFieldIsToldWithThoseThereAre() {
    assertThatThrownBy(() -> LabelWording.read("{typ}"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("{typ} is no field", "denomination", "price");
    assertThatThrownBy(() -> LabelWording.read("no field"))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
