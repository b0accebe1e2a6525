package fineweight.identification;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How many pieces a description is about. */
class QuantitiesTest {
  @ParameterizedTest
  @CsvSource({
    "3 merc dimes 40 42 45-D, 3",
    "$1 face war nickels, 20",
    "$1000 face bag 90% quarters, 4000",
    "roll of 90% dimes, 50",
    "2 rolls of 1964 quarters, 80",
    "drie rijksdaalders 1930, 3",
    "5 gulden 1827, 5",
    "1964 Kennedy x 12, 12",
    "1921 Morgan and 1922 Peace, 2",
    "1964-D quarter, 1"
  })
  void theWordsSayHowMany(String text, long pieces) {
    Answered got = Answered.to(text);
    assertThat(got.pieces()).as(got.said()).isEqualTo(Optional.of(pieces));
    assertThat(got.kind()).as(got.said()).isEqualTo("one");
  }

  @Test
  void twoDatesOfTwoMetalsAreAsked() {
    Answered got = Answered.to("kennedy halves 64 65");
    assertThat(got.kind()).isEqualTo("ask");
    assertThat(got.said()).contains("1964, 1965");
  }

  @Test
  void aPluralWithoutANumberIsSaid() {
    assertThat(Answered.to("1964 quarters").said()).contains("how many pieces is not said");
    assertThat(Answered.to("4 quarters 1964").said()).doesNotContain("how many");
  }

  @Test
  void aFaceValueThatNoCoinsMakeLeavesTheNumberOpen() {
    assertThat(Answered.to("$7.35 face 90% silver").pieces()).isEmpty();
  }

  @Test
  void anUndatedFaceValueOfSilverNamesTheTradesPractice() {
    // 25 g of 900 silver for each dollar: 22.5 g, 0.7234 ozt.
    Answered got = Answered.to("$10 face 90% halves");
    assertThat(got.grams(fineweight.metal.Metal.SILVER)).isEqualByComparingTo("225");
    assertThat(got.said()).contains("0.7234").contains("0.715");
  }

  @Test
  void aSizeAloneNamesNoCoin() {
    assertThat(Answered.to("2 oz").kind()).isEqualTo("none");
  }
}
