package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class MintsTest {
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
