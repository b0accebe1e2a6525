package fineweight.identification;

import fineweight.clue.Quantity;
import fineweight.standard.CoinStandard;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;

/**
 * How many pieces a row holds, once the coin is known.
 *
 * <p>Bank rolls of the United States: cent 50, five cents 40, dime 50, quarter 40, half dollar 20,
 * large dollar 20, small dollar 25 (encyclopedia article "Bank roll"; Federal Reserve practice). No
 * other roll has a fixed number.
 */
public final class PieceCount {
  private static final Map<String, Long> ROLLS =
      Map.of("0.01", 50L, "0.05", 40L, "0.1", 50L, "0.25", 40L, "0.5", 20L);

  private static final BigDecimal SMALL_DOLLAR_GRAMS = new BigDecimal("8.1");

  private PieceCount() {}

  /**
   * @param pieces how many, if that is known
   * @param reason why it is not known; empty if it is
   */
  public record Counted(Optional<Long> pieces, String reason) {
    static Counted of(long pieces) {
      return new Counted(Optional.of(pieces), "");
    }

    static Counted unknown(String reason) {
      return new Counted(Optional.empty(), reason);
    }
  }

  /**
   * @param standard a standard the coin may be of; empty if none is known
   */
  public static Counted of(Quantity quantity, Optional<CoinStandard> standard) {
    if (quantity instanceof Quantity.Pieces pieces) {
      return Counted.of(pieces.number());
    }
    if (quantity instanceof Quantity.Unusable unusable) {
      return Counted.unknown(unusable.reason());
    }
    if (standard.isEmpty()) {
      return Counted.unknown("how many pieces these are cannot be told before the coin is known");
    }
    return quantity instanceof Quantity.Rolls rolls
        ? rolls(rolls.number(), standard.get())
        : face(((Quantity.FaceValue) quantity).amount(), standard.get());
  }

  private static Counted rolls(long rolls, CoinStandard standard) {
    Optional<BigDecimal> face = standard.issue().faceValue();
    boolean bankRoll =
        standard.issue().country().equals("US") && !standard.issue().denomination().contains("oz");
    if (!bankRoll || face.isEmpty()) {
      return Counted.unknown(
          "how many pieces are in the roll? Only bank rolls of the United States have a fixed number");
    }
    Long each = ROLLS.get(face.get().stripTrailingZeros().toPlainString());
    if (each == null && face.get().compareTo(BigDecimal.ONE) == 0) {
      boolean small =
          standard
              .specification()
              .grossMass()
              .filter(mass -> mass.grams().compareTo(SMALL_DOLLAR_GRAMS) <= 0)
              .isPresent();
      each = small ? 25L : 20L;
    }
    return each == null
        ? Counted.unknown("how many pieces are in the roll?")
        : Counted.of(rolls * each);
  }

  private static Counted face(BigDecimal amount, CoinStandard standard) {
    Optional<BigDecimal> face = standard.issue().faceValue();
    if (face.isEmpty() || face.get().signum() == 0) {
      return Counted.unknown("this piece has no face value to divide by");
    }
    BigDecimal[] parts = amount.divideAndRemainder(face.get());
    return parts[1].signum() == 0
        ? Counted.of(parts[0].longValueExact())
        : Counted.unknown(
            amount.toPlainString()
                + " is no whole number of pieces of "
                + face.get().toPlainString());
  }
}
