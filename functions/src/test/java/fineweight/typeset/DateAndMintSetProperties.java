package fineweight.typeset;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.grade.Condition;
import fineweight.standard.CoinStandard;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class DateAndMintSetProperties {
  private static final List<CoinStandard> DOLLARS =
      List.of(Coins.EARLY_DOLLAR, Coins.MORGAN, Coins.PEACE);
  private static final TypeSet SET = DateAndMintSet.of("dollars", DOLLARS, 2026);

  @Provide
  Arbitrary<String> mints() {
    return Arbitraries.of("", "P", "D", "S", "O", "CC", "W");
  }

  @Provide
  Arbitrary<CoinStandard> dollars() {
    return Arbitraries.of(DOLLARS);
  }

  @Property
  void everyCoinThatMayHaveBeenStruckHasOnePlaceAndNoOtherHasOne(
      @ForAll("dollars") CoinStandard standard,
      @ForAll @IntRange(min = 1790, max = 1940) int year,
      @ForAll("mints") String mint) {
    CollectedPiece piece = Coins.piece(standard, year, mint, Condition.UNKNOWN);
    boolean struck =
        standard.issue().years().contains(year) && standard.issue().mints().allow(mint, year);
    // In 1921 two of the standards share their dates and mints, and so their places.
    boolean shared =
        DOLLARS.stream()
            .anyMatch(
                other ->
                    other.issue().years().contains(year)
                        && other.issue().mints().allow(mint, year));
    assertThat(SET.placesFor(piece)).hasSize(shared ? 1 : 0);
    if (struck) {
      assertThat(SET.placesFor(piece)).hasSize(1);
    }
  }
}
