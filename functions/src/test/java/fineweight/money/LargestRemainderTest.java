package fineweight.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class LargestRemainderTest {
  private static List<BigDecimal> weights(String... weights) {
    return Arrays.stream(weights).map(BigDecimal::new).toList();
  }

  private static List<Long> cents(List<Money> parts) {
    return parts.stream().map(part -> part.getAmountMinorLong()).toList();
  }

  /**
   * Source: electowiki, article "Hamilton method", worked example with the state populations of the
   * census of 1790 and a House of 60 seats.
   */
  @Test
  void apportionsSixtySeatsAmongTheFifteenStatesOf1790() {
    List<BigDecimal> populations =
        weights(
            "630560", "475327", "432879", "353523", "331589", "278514", "236841", "206236",
            "179570", "141822", "85533", "70835", "68705", "68446", "55540");
    assertThat(cents(LargestRemainder.split(Money.parse("USD 0.60"), populations)))
        .containsExactly(11L, 8L, 7L, 6L, 6L, 5L, 4L, 3L, 3L, 2L, 1L, 1L, 1L, 1L, 1L);
  }

  @Test
  void leftoverCentsGoToTheEarlierOfEqualRemainders() {
    assertThat(cents(LargestRemainder.split(Money.parse("USD 1.00"), weights("1", "1", "1"))))
        .containsExactly(34L, 33L, 33L);
    assertThat(cents(LargestRemainder.split(Money.parse("USD 0.02"), weights("1", "1", "1"))))
        .containsExactly(1L, 1L, 0L);
  }

  @Test
  void weightsMayBeFractionsOfAnyScale() {
    assertThat(cents(LargestRemainder.split(Money.parse("USD 10.00"), weights("0.25", "7.5E-1"))))
        .containsExactly(250L, 750L);
  }

  @Test
  void aZeroWeightGetsNothing() {
    assertThat(cents(LargestRemainder.split(Money.parse("USD 0.05"), weights("0", "3", "0"))))
        .containsExactly(0L, 5L, 0L);
  }

  @Test
  void splitsInTheSmallestUnitOfTheCurrency() {
    assertThat(LargestRemainder.split(Money.parse("JPY 100"), weights("1", "2")))
        .containsExactly(Money.parse("JPY 33"), Money.parse("JPY 67"));
    assertThat(LargestRemainder.split(Money.parse("KWD 0.001"), weights("1", "2")))
        .containsExactly(Money.parse("KWD 0.000"), Money.parse("KWD 0.001"));
  }

  @Test
  void refusesWhatCannotBeSplit() {
    assertThatThrownBy(() -> LargestRemainder.split(Money.parse("USD -1.00"), weights("1")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("negative");
    assertThatThrownBy(() -> LargestRemainder.split(Money.parse("USD 1.00"), weights("1", "-1")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("weight");
    assertThatThrownBy(() -> LargestRemainder.split(Money.parse("USD 1.00"), weights("0", "0")))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> LargestRemainder.split(Money.parse("USD 1.00"), List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
