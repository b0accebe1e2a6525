package fineweight.grade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The scale is Sheldon's of 1949; the numbers that go with the words are the trade's. A sample of
 * them as printed in the article "The Sheldon Scale for Grading U.S. Coins" (informationclickdepot)
 * is checked apart; the rest is common practice without a source.
 */
class GradeTest {
  @ParameterizedTest
  @CsvSource({
    "P-1, 1, 1",
    "FR-2, 2, 2",
    "AG-3, 3, 3",
    "G-4, 4, 4",
    "G-6, 6, 6",
    "VG-8, 8, 8",
    "VG10, 10, 10",
    "F-12, 12, 12",
    "F 15, 15, 15",
    "VF-20, 20, 20",
    "vf25, 25, 25",
    "VF-35, 35, 35",
    "EF-40, 40, 40",
    "XF 45, 45, 45",
    "AU-50, 50, 50",
    "AU-58, 58, 58",
    "MS-60, 60, 60",
    "ms65+, 65, 65",
    "MS66RD, 66, 66",
    "MS 70, 70, 70",
    "G, 4, 6",
    "Good, 4, 6",
    "VG, 8, 10",
    "very good, 8, 10",
    "Fine, 12, 15",
    "VF, 20, 35",
    "Very Fine, 20, 35",
    "XF, 40, 45",
    "extremely  fine, 40, 45",
    "About Uncirculated, 50, 58",
    "almost unc, 50, 58",
    "BU, 60, 70",
    "Unc., 60, 70",
    "Uncirculated, 60, 70",
    "Gem BU, 60, 70",
    "Choice Brilliant Uncirculated, 60, 70",
    "F/VF, 12, 35",
    "VF-XF, 20, 45",
    "VG to F, 8, 15",
    "40-45, 40, 45",
    "MS63/65, 63, 65",
    "64, 64, 64",
    "Poor, 1, 1",
    "Fair, 2, 2",
    "about good, 3, 3",
  })
  void readsWhatCollectorsWrite(String text, int low, int high) {
    assertThat(Grade.read(text)).contains(Grade.between(low, high));
  }

  @ParameterizedTest
  @CsvSource({
    "PR, 1, 70",
    "Proof, 1, 70",
    "PF-67, 67, 67",
    "Proof 65, 65, 65",
    "PR69DCAM, 69, 69",
  })
  void aProofIsTold(String text, int low, int high) {
    assertThat(Grade.read(text)).contains(new Grade(low, high, true));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  ", "nice", "VF-65", "MS-50", "71", "0", "MS-71", "shiny/VF", "DC"})
  void readsNothingIntoOtherWords(String text) {
    assertThat(Grade.read(text)).isEqualTo(Optional.empty());
  }

  @Test
  void theWordsAscendAsTheScaleDoes() {
    String[] words = {"P", "FR", "AG", "G", "VG", "F", "VF", "XF", "AU", "MS"};
    for (int i = 1; i < words.length; i++) {
      Grade lower = Grade.read(words[i - 1]).orElseThrow();
      Grade higher = Grade.read(words[i]).orElseThrow();
      assertThat(higher.surelyAbove(lower)).as(words[i] + " above " + words[i - 1]).isTrue();
      assertThat(lower.surelyAbove(higher)).isFalse();
    }
  }

  /** Source: the article named above, in its order. */
  @Test
  void theStepsOfThePrintedScaleAscend() {
    String[] printed = {
      "Poor-1", "Fair-2", "AG-3", "G-4", "G-6", "VG-8", "F-12", "VF-20", "VF-30", "EF-40", "XF-45",
      "AU-50"
    };
    int last = 0;
    for (String step : printed) {
      Grade grade = Grade.read(step).orElseThrow();
      assertThat(grade.isExact()).as(step).isTrue();
      assertThat(grade.low()).as(step).isGreaterThan(last);
      assertThat(step).endsWith("-" + grade.low());
      last = grade.low();
    }
  }

  @Test
  void overlappingRangesAreNotSurelyOneAboveTheOther() {
    assertThat(Grade.between(20, 35).surelyAbove(Grade.between(12, 35))).isFalse();
    assertThat(Grade.of(35).surelyAbove(Grade.of(35))).isFalse();
  }

  @Test
  void refusesNumbersOffTheScale() {
    assertThatThrownBy(() -> Grade.of(0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Grade.of(71)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Grade.between(20, 12)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aConditionIsToldInWords() {
    assertThat(Condition.certified(Grade.of(65)).words()).isEqualTo("certified 65");
    assertThat(Condition.raw(Grade.between(20, 35)).withDamage().words())
        .isEqualTo("raw 20 to 35, damaged");
    assertThat(Condition.UNKNOWN.words()).isEqualTo("raw, no grade");
    assertThat(Condition.raw(new Grade(67, 67, true)).words()).isEqualTo("raw PR 67");
  }

  @ParameterizedTest
  @ValueSource(strings = {"VF/XF/AU", "VF/nice", "nice/VF", "/", "VF/", "-"})
  void readsNoHalfPairsAndNoThreefoldOnes(String text) {
    assertThat(Grade.read(text)).isEmpty();
  }
}
