package fineweight.valuation;

import fineweight.grade.Condition;
import fineweight.metal.FineContent;
import fineweight.money.Amounts;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.BigMoney;

/**
 * One row of pieces that are alike, with all that its worth depends on. Immutable.
 *
 * @param each the metal in one piece as struck
 * @param count how many, one or more
 * @param wear what use has taken
 * @param payoutClass the collector's word for its class of payout; empty for none
 * @param face the face value of one piece, where it is still money
 * @param ownPrice the collector's own price, his figure for the piece before his list
 * @param condition its preservation
 */
public record Piece(
    FineContent each,
    int count,
    Wear wear,
    String payoutClass,
    Optional<BigMoney> face,
    Optional<OwnPrice> ownPrice,
    Condition condition) {
  /**
   * @throws IllegalArgumentException if the count is below one or the face value negative
   */
  public Piece {
    Objects.requireNonNull(each, "each");
    Objects.requireNonNull(wear, "wear");
    Objects.requireNonNull(payoutClass, "payoutClass");
    Objects.requireNonNull(ownPrice, "ownPrice");
    Objects.requireNonNull(condition, "condition");
    face = face.map(Amounts::normal);
    if (count < 1) {
      throw new IllegalArgumentException("the count is one or more, not " + count);
    }
    if (face.isPresent() && face.get().isNegative()) {
      throw new IllegalArgumentException("a face value is zero or more, not " + face.get());
    }
  }

  /** One piece as struck, of which nothing but its metal is known. */
  public static Piece of(FineContent each) {
    return new Piece(
        each, 1, Wear.none(), "", Optional.empty(), Optional.empty(), Condition.UNKNOWN);
  }

  public Piece times(int newCount) {
    return new Piece(each, newCount, wear, payoutClass, face, ownPrice, condition);
  }

  public Piece worn(Wear newWear) {
    return new Piece(each, count, newWear, payoutClass, face, ownPrice, condition);
  }

  public Piece inClass(String newClass) {
    return new Piece(each, count, wear, newClass, face, ownPrice, condition);
  }

  public Piece withFace(BigMoney newFace) {
    return new Piece(each, count, wear, payoutClass, Optional.of(newFace), ownPrice, condition);
  }

  public Piece priced(OwnPrice price) {
    return new Piece(each, count, wear, payoutClass, face, Optional.of(price), condition);
  }

  public Piece in(Condition newCondition) {
    return new Piece(each, count, wear, payoutClass, face, ownPrice, newCondition);
  }

  /** The metal that is left in all pieces of the row. */
  public FineContent content() {
    return each.times(wear.remaining().multiply(BigDecimal.valueOf(count)));
  }
}
