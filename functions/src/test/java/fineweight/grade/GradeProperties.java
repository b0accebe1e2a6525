package fineweight.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class GradeProperties {
  /** The lowest and highest number of each word: common practice of the trade. */
  private static final Map<String, int[]> WORDS =
      Map.of(
          "G", new int[] {4, 6},
          "VG", new int[] {8, 10},
          "F", new int[] {12, 15},
          "VF", new int[] {20, 35},
          "XF", new int[] {40, 45},
          "AU", new int[] {50, 58},
          "MS", new int[] {60, 70},
          "PR", new int[] {1, 70});

  @Provide
  Arbitrary<String> word() {
    return Arbitraries.of(WORDS.keySet());
  }

  @Provide
  Arbitrary<String> join() {
    return Arbitraries.of("", "-", " ");
  }

  @Property
  void aNumberIsReadExactlyWhereItBelongsToItsWord(
      @ForAll("word") String word,
      @ForAll("join") String join,
      @ForAll @IntRange(min = 1, max = 99) int number) {
    int[] bounds = WORDS.get(word);
    Optional<Grade> read = Grade.read(word.toLowerCase(Locale.ROOT) + join + number);
    boolean belongs = number >= bounds[0] && number <= bounds[1];
    assertThat(read.isPresent()).isEqualTo(belongs);
    read.ifPresent(
        grade -> {
          assertThat(grade.low()).isEqualTo(number);
          assertThat(grade.isExact()).isTrue();
          assertThat(grade.proof()).isEqualTo(word.equals("PR"));
        });
  }

  @Property
  void aPairSpansBothItsWords(@ForAll("word") String one, @ForAll("word") String other) {
    Grade grade = Grade.read(one + "/" + other).orElseThrow();
    assertThat(grade.low()).isEqualTo(Math.min(WORDS.get(one)[0], WORDS.get(other)[0]));
    assertThat(grade.high()).isEqualTo(Math.max(WORDS.get(one)[1], WORDS.get(other)[1]));
  }

  @Property
  void anyTextIsAnsweredWithoutFailing(@ForAll String text) {
    Grade.read(text)
        .ifPresent(
            grade -> {
              assertThat(grade.low()).isBetween(1, 70);
              assertThat(grade.high()).isBetween(grade.low(), 70);
            });
  }
}
