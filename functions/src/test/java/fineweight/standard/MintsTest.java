package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class MintsTest {
  @Test
  void aYearMayLeaveOneMint() {
    Mints mints = Mints.parse("P (none); D (1921); S; CC (1878-1893)");
    assertThat(mints.onlyOf(List.of("P", "S", "CC"), OptionalInt.of(1890))).isTrue();
    assertThat(mints.onlyOf(List.of("", "S", "CC"), OptionalInt.of(1890))).isTrue();
    assertThat(mints.onlyOf(List.of("P", "S"), OptionalInt.of(1890))).isFalse();
    assertThat(mints.onlyOf(List.of("P", "S"), OptionalInt.of(1900))).isTrue();
    assertThat(mints.onlyOf(List.of("P", "S"), OptionalInt.empty())).isFalse();
    assertThat(Mints.ANY.onlyOf(List.of("P"), OptionalInt.empty())).isFalse();
    assertThat(mints.yearsOf("CC")).contains(Years.parse("1878-1893"));
    assertThat(mints.yearsOf("S")).isEmpty();
    assertThat(mints.yearsOf("")).isEmpty();
    assertThat(mints.yearsOf("W")).isEmpty();
  }

  @Test
  void anEmptyTextAllowsEveryMark() {
    assertThat(Mints.parse(" ").allow("CC", 1890)).isTrue();
    assertThat(Mints.parse("").allow("", 1890)).isTrue();
  }

  @Test
  void aMarkMayBeLimitedToYearsAndMayBeMissingOnTheCoin() {
    Mints mints = Mints.parse("P (none); D; S (1938-1941;1945)");
    assertThat(mints.allow("", 1942)).isTrue();
    assertThat(mints.allow("P", 1942)).isTrue();
    assertThat(mints.allow("D", 1942)).isTrue();
    assertThat(mints.allow("S", 1941)).isTrue();
    assertThat(mints.allow("S", 1945)).isTrue();
    assertThat(mints.allow("S", 1942)).isFalse();
    assertThat(mints.allow("O", 1942)).isFalse();
  }

  @Test
  void aDashStandsForACoinThatBearsNoMarkInThatYear() {
    Mints mints = Mints.parse("- (none) (1942); D");
    assertThat(mints.allow("", 1942)).isTrue();
    assertThat(mints.allow("", 1941)).isFalse();
    assertThat(mints.allow("P", 1942)).isFalse();
  }

  @Test
  void whatIsWrittenIsReadBack() {
    for (String text : List.of("P (none); D; S (1938-1941;1945)", "- (none) (1942); CC", "")) {
      assertThat(Mints.parse(text).toString()).isEqualTo(text);
      assertThat(Mints.parse(Mints.parse(text).toString())).isEqualTo(Mints.parse(text));
    }
  }

  @Test
  void runningTextIsRefused() {
    for (String text : List.of("S (2014 also P, D, W)", "S proof", "d", "P; ; D", "1976 S only")) {
      assertThatThrownBy(() -> Mints.parse(text))
          .as(text)
          .isInstanceOf(IllegalArgumentException.class);
    }
  }
}
