package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.standard.Years.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class YearsProperties {
  @Property
  void whatIsWrittenIsReadBack(@ForAll("years") Years years) {
    assertThat(Years.parse(years.toString())).isEqualTo(years);
  }

  @Property
  void twoOverlapExactlyWhereAYearLiesInBoth(
      @ForAll("years") Years years, @ForAll("years") Years others) {
    boolean shared =
        IntStream.rangeClosed(1, 9999)
            .anyMatch(year -> years.contains(year) && others.contains(year));
    assertThat(years.overlaps(others)).isEqualTo(shared);
  }

  @Property
  void oneCoversTheOtherExactlyWhereItHasEveryYearOfIt(
      @ForAll("years") Years years, @ForAll("years") Years others) {
    boolean everyYear =
        IntStream.rangeClosed(1, 9999)
            .allMatch(year -> years.contains(year) || !others.contains(year));
    boolean open = others.last().isEmpty() && years.last().isPresent();
    assertThat(years.cover(others)).isEqualTo(everyYear && !open);
    assertThat(years.cover(years)).isTrue();
  }

  @Property
  void firstAndLastAreTheEnds(@ForAll("years") Years years) {
    assertThat(years.contains(years.first())).isTrue();
    assertThat(years.contains(years.first() - 1)).isFalse();
    years
        .last()
        .ifPresentOrElse(
            last -> {
              assertThat(years.contains(last)).isTrue();
              assertThat(years.contains(last + 1)).isFalse();
            },
            () -> assertThat(years.contains(9999)).isTrue());
  }

  @Example
  void rangesThatTouchCoverTogether() {
    assertThat(Years.parse("1878-1904;1905-1921").cover(Years.parse("1900-1910"))).isTrue();
    assertThat(Years.parse("1878-1904;1906-1921").cover(Years.parse("1900-1910"))).isFalse();
    assertThat(Years.parse("1986-").cover(Years.parse("1990-1991;2000-"))).isTrue();
  }

  @Example
  void rangesThatDoNotAscendAreRefused() {
    for (String text : List.of("1916-1915", "1920;1916", "1916-1920;1920", "1990-;2000", "0")) {
      assertThatThrownBy(() -> Years.parse(text))
          .as(text)
          .isInstanceOf(IllegalArgumentException.class);
    }
    for (String text : List.of("", "19x6", "1916-1920-1930", ";")) {
      assertThatThrownBy(() -> Years.parse(text))
          .as(text)
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  /** Ascending ends with gaps, sometimes with an open end. */
  @Provide
  Arbitrary<Years> years() {
    Arbitrary<List<Integer>> ends =
        Arbitraries.integers().between(1, 2100).list().uniqueElements().ofMinSize(1).ofMaxSize(6);
    return Arbitraries.of(true, false)
        .flatMap(open -> ends.map(list -> ranges(list.stream().sorted().toList(), open)));
  }

  private static Years ranges(List<Integer> ends, boolean open) {
    List<Range> ranges = new ArrayList<>();
    for (int i = 0; i < ends.size(); i += 2) {
      int first = ends.get(i);
      boolean last = i + 2 >= ends.size();
      int end = i + 1 < ends.size() ? ends.get(i + 1) : first;
      ranges.add(new Range(first, last && open ? Integer.MAX_VALUE : end));
    }
    return new Years(ranges);
  }
}
