package fineweight.price;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.grade.Condition;
import fineweight.grade.Grade;
import fineweight.standard.Years;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

class PriceOrderProperties {
  @Provide
  Arbitrary<List<ListedPrice>> lists() {
    Arbitrary<Optional<Years>> years =
        Arbitraries.of("1916", "1916-1945", "1940-1945").map(Years::parse).optional(0.8);
    Arbitrary<String> mints = Arbitraries.of("", "D", "none");
    Arbitrary<Optional<Grade>> grades =
        Arbitraries.of(4, 8, 20, 45, 60, 65).map(Grade::of).optional(0.9);
    Arbitrary<BigDecimal> prices = Arbitraries.integers().between(0, 500).map(BigDecimal::valueOf);
    Arbitrary<Optional<LocalDate>> days =
        Arbitraries.of(LocalDate.of(2024, 1, 1), LocalDate.of(2025, 1, 1)).optional(0.7);
    return Combinators.combine(years, mints, grades, Arbitraries.of(true, false), prices, days)
        .as(
            (year, mint, grade, certified, price, day) ->
                new ListedPrice(
                    new ListedPrice.Pieces("dime", year, mint),
                    grade,
                    certified,
                    BigMoney.of(CurrencyUnit.USD, price),
                    day,
                    ""))
        .list()
        .ofMaxSize(12);
  }

  @Property
  void theOrderOfTheLinesDoesNotMatter(
      @ForAll("lists") List<ListedPrice> lines,
      @ForAll @IntRange(min = 1, max = 70) int grade,
      @ForAll @IntRange(min = 1915, max = 1946) int year,
      @ForAll boolean certified,
      @ForAll Random random) {
    PriceQuestion question =
        new PriceQuestion(
            Set.of("dime"),
            year,
            "D",
            new Condition(Optional.of(Grade.of(grade)), certified, false));
    List<ListedPrice> shuffled = new ArrayList<>(lines);
    Collections.shuffle(shuffled, random);
    assertThat(PriceList.of(shuffled).price(question))
        .isEqualTo(PriceList.of(lines).price(question));
  }

  @Property
  void aPriceAlwaysLiesWithinThoseOfItsKind(
      @ForAll("lists") List<ListedPrice> lines,
      @ForAll @IntRange(min = 1, max = 70) int grade,
      @ForAll boolean certified) {
    PriceAnswer answer =
        PriceList.of(lines)
            .price(
                new PriceQuestion(
                    Set.of("dime"),
                    1941,
                    "",
                    new Condition(Optional.of(Grade.of(grade)), certified, false)));
    assertThat(answer.sentence()).isNotBlank();
    if (answer instanceof PriceAnswer.Found found) {
      List<BigMoney> ofKind =
          lines.stream()
              .filter(line -> line.certified() == certified)
              .map(ListedPrice::each)
              .toList();
      assertThat(ofKind).anyMatch(each -> !each.isGreaterThan(found.each()));
      assertThat(ofKind).anyMatch(each -> !each.isLessThan(found.each()));
    }
  }
}
