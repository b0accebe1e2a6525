package fineweight.valuation;

import static fineweight.valuation.Samples.usd;
import static org.assertj.core.api.Assertions.assertThat;

import fineweight.grade.Condition;
import fineweight.grade.Grade;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every way in which a price, metal and face can meet, one row each, the expected basis written
 * down from the rule: the person's own figure; his list, unless the piece is damaged; else the
 * higher of metal and face. The dime melts at 2.17 at 30 an ounce.
 */
class OrderOfWorthTest {
  @ParameterizedTest
  @CsvSource({
    // own, kind, face, grams, damaged, rule, basis, worth
    "5, STATED, 0.10, 2.25, false, LOWERS_TO_METAL, STATED, 5.00",
    "5, STATED, 0.10, 2.25, true, LOWERS_TO_METAL, STATED, 5.00",
    "5, STATED, 0.10, 2.25, true, LIST_COUNTS, STATED, 5.00",
    "0, STATED, 0.10, 2.25, false, LOWERS_TO_METAL, STATED, 0.00",
    "1, STATED, 0.10, 2.25, false, LOWERS_TO_METAL, STATED, 1.00",
    "5, OWN_PRICE, 0.10, 2.25, false, LOWERS_TO_METAL, OWN_PRICE, 5.00",
    "1, OWN_PRICE, 0.10, 2.25, false, LOWERS_TO_METAL, OWN_PRICE, 1.00",
    "5, OWN_PRICE, 0.10, 2.25, true, LOWERS_TO_METAL, METAL, 2.17",
    "5, OWN_PRICE, 10, 2.25, true, LOWERS_TO_METAL, FACE, 10.00",
    "5, OWN_PRICE, 0.10, 0, true, LOWERS_TO_METAL, FACE, 0.10",
    "5, OWN_PRICE, , 0, true, LOWERS_TO_METAL, NONE, 0.00",
    "5, OWN_PRICE, 0.10, 2.25, true, LIST_COUNTS, OWN_PRICE, 5.00",
    ", , 0.10, 2.25, false, LOWERS_TO_METAL, METAL, 2.17",
    ", , 0.10, 2.25, true, LOWERS_TO_METAL, METAL, 2.17",
    ", , 0.10, 2.25, true, LIST_COUNTS, METAL, 2.17",
    ", , , 2.25, false, LOWERS_TO_METAL, METAL, 2.17",
    ", , 2.17, 2.25, false, LOWERS_TO_METAL, METAL, 2.17",
    ", , 2.18, 2.25, false, LOWERS_TO_METAL, FACE, 2.18",
    ", , 0.10, 0, false, LOWERS_TO_METAL, FACE, 0.10",
    ", , 0.10, 0, true, LOWERS_TO_METAL, FACE, 0.10",
    ", , , 0, false, LOWERS_TO_METAL, NONE, 0.00",
    ", , 0, 0, false, LOWERS_TO_METAL, NONE, 0.00",
  })
  void theBasisFollowsTheOrder(
      String own,
      Basis kind,
      String face,
      String grams,
      boolean damaged,
      DamageRule rule,
      Basis basis,
      String worth) {
    Piece piece =
        new Piece(
            Samples.silver(grams),
            1,
            Wear.none(),
            "",
            Optional.ofNullable(face).map(Samples::usd),
            Optional.ofNullable(own).map(price -> new OwnPrice(usd(price), kind, "")),
            new Condition(Optional.of(Grade.of(20)), false, damaged));
    Worth found = new Valuer(Samples.SPOTS, Payouts.atMelt(), rule).value(piece).worth();
    assertThat(found.basis()).isEqualTo(basis);
    assertThat(found.atCell().getAmount()).isEqualByComparingTo(worth);
  }
}
