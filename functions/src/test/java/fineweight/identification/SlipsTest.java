package fineweight.identification;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One wrong letter in a long word is read and said; short words are never guessed. */
class SlipsTest {
  @ParameterizedTest
  @ValueSource(strings = {"1943 mercary dime", "62 rosevelt dime", "1942 Walkng Liberty half"})
  void aSlipInALongWordIsAcceptedAndSaid(String line) {
    Answered got = Answered.to(line);
    assertThat(got.kind()).as(got.said()).isEqualTo("one");
    assertThat(got.said()).contains("is read as");
    assertThat(got.isFlagged()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"1942 dine", "1942 dima", "1964 haff", "1942 dme", "1921 gald"})
  void aShortWordIsNeverGuessed(String line) {
    Answered got = Answered.to(line);
    assertThat(got.kind()).as(got.said()).isNotIn("one", "base");
    assertThat(got.said()).doesNotContain("is read as");
  }
}
