package fineweight.typeset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.grade.Condition;
import fineweight.grade.Grade;
import fineweight.standard.Standards;
import fineweight.valuation.Samples;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class SetReviewTest {
  private static final TypeSet SET = TypeSet.unitedStates();
  private static final Condition VF = Condition.raw(Grade.between(20, 35));

  private static CollectedPiece morgan(Condition condition) {
    return Coins.piece(Coins.MORGAN, 1881, "S", condition);
  }

  private static String sentence(CollectedPiece... pieces) {
    return SetReview.of(SET, List.of(pieces)).standings().get(0).sentence();
  }

  @Test
  void coverageAndHolesFollowFromTheList() {
    SetReview review =
        SetReview.of(SET, List.of(morgan(VF), Coins.piece(Coins.PEACE, 1923, "", VF)));
    assertThat(review.held())
        .extracting(TypeEntry::key)
        .containsExactly("dollar-morgan", "dollar-peace");
    assertThat(review.holes()).hasSize(SET.entries().size() - 2);
    assertThat(review.coverageWords()).isEqualTo("2 of " + SET.entries().size() + " places filled");
  }

  /** A Morgan dollar: 412.5 grains, 900 fine, hold 24.0566 g or 0.7734 oz; 23.20 at 30. */
  @Test
  void aHoleHasAFloorOfMetal() {
    Standards standards =
        Standards.of(List.of(Coins.MORGAN, Coins.PEACE, Coins.EARLY_DOLLAR, Coins.MEDAL));
    TypeEntry morgan =
        SetReview.of(SET, List.of(morgan(VF))).standings().get(0).place().orElseThrow();
    assertThat(
            TypeSet.metalFloor(morgan, standards, Samples.SPOTS)
                .orElseThrow()
                .toMoney(RoundingMode.HALF_UP))
        .isEqualTo(Money.parse("USD 23.20"));
    TypeEntry seated =
        SET.entries().stream()
            .filter(e -> e.key().equals("dollar-seated"))
            .findFirst()
            .orElseThrow();
    assertThat(TypeSet.metalFloor(seated, standards, Samples.SPOTS)).isEmpty();
  }

  @Test
  void theFloorIsThatOfTheCheapestStandard() {
    TypeEntry any =
        new TypeEntry(
            "any",
            "any dollar",
            new TypeEntry.Origin("US", "Dollar", List.of()),
            fineweight.standard.Years.parse("1878-1935"),
            List.of());
    Standards standards = Standards.of(List.of(Coins.MORGAN, Coins.MEDAL));
    assertThat(
            TypeSet.metalFloor(any, standards, Samples.SPOTS)
                .orElseThrow()
                .isLessThan(Samples.usd("1")))
        .isTrue();
  }

  @Test
  void theGroundIsSaid() {
    assertThat(sentence(morgan(VF))).isEqualTo("dollar, Morgan: the only one");
    assertThat(sentence(morgan(VF.withDamage())))
        .isEqualTo("dollar, Morgan: the only one, but damaged");
    assertThat(sentence(morgan(VF), morgan(Condition.certified(Grade.of(64)))))
        .isEqualTo("dollar, Morgan: not better than another, certified 64");
    assertThat(sentence(morgan(Condition.UNKNOWN), morgan(VF)))
        .isEqualTo(
            "dollar, Morgan: not better than another, raw 20 to 35, and its grade is not recorded");
    assertThat(sentence(morgan(Condition.certified(Grade.of(8))), morgan(VF)))
        .contains("only by its owner's eye");
    assertThat(sentence(Coins.piece(Coins.EARLY_DOLLAR, 1795, "", VF)))
        .isEqualTo("it may be dollar, Flowing Hair or dollar, Draped Bust: which?");
    assertThat(sentence(Coins.piece(Coins.MEDAL, 1893, "", VF)))
        .isEqualTo("the set has no place for it");
  }

  @Test
  void theCollectorMayNameThePlace() {
    CollectedPiece open = Coins.piece(Coins.EARLY_DOLLAR, 1795, "", VF);
    for (String name : List.of("dollar-draped-bust", "Dollar, draped bust")) {
      Standing standing = SetReview.of(SET, List.of(Coins.named(open, name))).standings().get(0);
      assertThat(standing.status()).isEqualTo(TypeSetStatus.FILLS);
      assertThat(standing.place().orElseThrow().key()).isEqualTo("dollar-draped-bust");
    }
    assertThat(
            SetReview.of(SET, List.of(Coins.named(open, "unheard of"))).standings().get(0).status())
        .isEqualTo(TypeSetStatus.NOT_IN_SET);
  }

  @Test
  void severalStandardsThatShareAPlaceAreNoDoubt() {
    CollectedPiece undated =
        new CollectedPiece(
            "1",
            List.of(Coins.MORGAN),
            OptionalInt.empty(),
            Optional.empty(),
            Optional.empty(),
            VF,
            1,
            Optional.empty());
    assertThat(SetReview.of(SET, List.of(undated)).standings().get(0).status())
        .isEqualTo(TypeSetStatus.FILLS);
    CollectedPiece either =
        new CollectedPiece(
            "2",
            List.of(Coins.MORGAN, Coins.PEACE),
            OptionalInt.of(1921),
            Optional.empty(),
            Optional.empty(),
            VF,
            1,
            Optional.empty());
    assertThat(SetReview.of(SET, List.of(either)).standings().get(0).status())
        .isEqualTo(TypeSetStatus.OPEN);
  }

  @Test
  void theSameRowTwiceIsStillTwoRows() {
    CollectedPiece row = morgan(VF);
    assertThat(SetReview.of(SET, List.of(row, row)).standings())
        .extracting(Standing::proposal)
        .containsExactly("keep", "sell");
  }

  @Test
  void refusesStandingsAndRowsThatCannotBe() {
    assertThatThrownBy(
            () -> new Standing(morgan(VF), Optional.empty(), TypeSetStatus.OPEN, 1, 1, ""))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () ->
                new CollectedPiece(
                    "1",
                    List.of(),
                    OptionalInt.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    VF,
                    0,
                    Optional.empty()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void theFloorDoesNotDependOnTheOrderOfTheCatalogue() {
    TypeEntry any =
        new TypeEntry(
            "any",
            "any dollar",
            new TypeEntry.Origin("US", "dollar", List.of()),
            fineweight.standard.Years.parse("1878-1935"),
            List.of());
    assertThat(
            TypeSet.metalFloor(
                any, Standards.of(List.of(Coins.MEDAL, Coins.MORGAN)), Samples.SPOTS))
        .isEqualTo(
            TypeSet.metalFloor(
                any, Standards.of(List.of(Coins.MORGAN, Coins.MEDAL)), Samples.SPOTS));
  }

  @Test
  void aPlaceIsForOneCountryAndOneDenomination() {
    TypeEntry.Origin dollars = new TypeEntry.Origin("US", "dollar", List.of());
    assertThat(dollars.fits(Coins.MORGAN)).isTrue();
    assertThat(new TypeEntry.Origin("CA", "dollar", List.of()).fits(Coins.MORGAN)).isFalse();
    assertThat(new TypeEntry.Origin("US", "half dollar", List.of()).fits(Coins.MORGAN)).isFalse();
    assertThat(new TypeEntry.Origin("CA", "cent", List.of(Coins.MORGAN.id())).fits(Coins.MORGAN))
        .isTrue();
  }

  @Test
  void ofEqualLowEndsTheWiderRangeIsBetter() {
    CollectedPiece exact = morgan(Condition.raw(Grade.of(60)));
    CollectedPiece range = morgan(Condition.raw(Grade.between(60, 70)));
    assertThat(SetReview.of(SET, List.of(exact, range)).standings())
        .extracting(Standing::proposal)
        .containsExactly("sell", "keep");
  }

  @Test
  void aDecisionIsNamedAsSuch() {
    CollectedPiece sold = ruled(morgan(VF), CollectedPiece.Ruling.SELL);
    assertThat(sentence(sold)).isEqualTo("dollar, Morgan: your decision; it leaves a hole");
    assertThat(sentence(sold, morgan(VF))).isEqualTo("dollar, Morgan: your decision");
    assertThat(sentence(ruled(morgan(VF), CollectedPiece.Ruling.KEEP)))
        .isEqualTo("dollar, Morgan: your decision");
    assertThat(sentence(ruled(Coins.piece(Coins.MEDAL, 1893, "", VF), CollectedPiece.Ruling.SELL)))
        .isEqualTo("the set has no place for it; your decision");
  }

  private static CollectedPiece ruled(CollectedPiece piece, CollectedPiece.Ruling ruling) {
    return new CollectedPiece(
        piece.key(),
        piece.standards(),
        piece.year(),
        piece.mint(),
        piece.type(),
        piece.condition(),
        piece.count(),
        Optional.of(ruling));
  }
}
