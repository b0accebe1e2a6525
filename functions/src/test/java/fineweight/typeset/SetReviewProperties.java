package fineweight.typeset;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.grade.Condition;
import fineweight.grade.Grade;
import fineweight.standard.CoinStandard;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class SetReviewProperties {
  private static final TypeSet SET = TypeSet.unitedStates();

  @Provide
  Arbitrary<List<CollectedPiece>> collections() {
    Arbitrary<CoinStandard> standards =
        Arbitraries.of(Coins.MORGAN, Coins.PEACE, Coins.EARLY_DOLLAR, Coins.MEDAL);
    Arbitrary<Optional<Grade>> grades =
        Arbitraries.integers().between(1, 70).map(Grade::of).optional(0.8);
    Arbitrary<Condition> conditions =
        Combinators.combine(
                grades, Arbitraries.of(true, false, false), Arbitraries.of(true, false, false))
            .as(Condition::new);
    Arbitrary<Optional<CollectedPiece.Ruling>> rulings =
        Arbitraries.of(CollectedPiece.Ruling.values()).optional(0.3);
    return Combinators.combine(standards, conditions, Arbitraries.integers().between(1, 6), rulings)
        .as(SetReviewProperties::piece)
        .list()
        .ofMaxSize(14);
  }

  private static CollectedPiece piece(
      CoinStandard standard,
      Condition condition,
      int count,
      Optional<CollectedPiece.Ruling> ruling) {
    return new CollectedPiece(
        standard.id(),
        List.of(standard),
        OptionalInt.of(standard.issue().years().first()),
        Optional.of(""),
        Optional.empty(),
        condition,
        count,
        ruling);
  }

  @Property
  void theOnlyExampleOfAPlaceIsNeverProposedForSale(
      @ForAll("collections") List<CollectedPiece> pieces) {
    SetReview review = SetReview.of(SET, pieces);
    for (TypeEntry place : review.held()) {
      List<Standing> rivals =
          review.standings().stream()
              .filter(one -> one.place().filter(place::equals).isPresent())
              .toList();
      boolean allRuledOut =
          rivals.stream().allMatch(one -> one.piece().isRuled(CollectedPiece.Ruling.SELL));
      int kept = rivals.stream().mapToInt(Standing::keep).sum();
      assertThat(kept > 0).isEqualTo(!allRuledOut);
    }
  }

  @Property
  void theCollectorsDecisionAlwaysStands(@ForAll("collections") List<CollectedPiece> pieces) {
    SetReview review = SetReview.of(SET, pieces);
    assertThat(review.standings()).extracting(Standing::piece).isEqualTo(pieces);
    for (Standing standing : review.standings()) {
      standing
          .piece()
          .ruling()
          .ifPresent(
              ruling ->
                  assertThat(standing.proposal())
                      .isEqualTo(ruling == CollectedPiece.Ruling.KEEP ? "keep" : "sell"));
    }
  }

  @Property
  void whatIsKeptIsNeverWorseThanWhatIsProposedForSale(
      @ForAll("collections") List<CollectedPiece> pieces) {
    SetReview review = SetReview.of(SET, pieces);
    for (Standing sold : review.standings()) {
      boolean proposed = sold.sell() == sold.piece().count() && sold.piece().ruling().isEmpty();
      if (proposed) {
        assertThat(review.standings())
            .anyMatch(
                kept ->
                    kept.keep() > 0
                        && kept.place().equals(sold.place())
                        && SetReview.BETTER_FIRST.compare(kept.piece(), sold.piece()) <= 0);
      }
    }
  }

  @Property
  void everyPieceOfAPlaceIsEitherKeptOrForSale(@ForAll("collections") List<CollectedPiece> pieces) {
    for (Standing standing : SetReview.of(SET, pieces).standings()) {
      if (standing.place().isPresent()) {
        assertThat(standing.keep() + standing.sell()).isEqualTo(standing.piece().count());
      }
    }
  }
}
