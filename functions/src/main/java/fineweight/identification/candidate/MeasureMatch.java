package fineweight.identification.candidate;

import fineweight.quantity.Decimals;
import fineweight.quantity.Mass;
import fineweight.standard.CoinStandard;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * Whether a measured piece fits a standard. A coin leaves the mint within about 1 or 2 % and loses
 * mass by wear; scales and people round.
 */
public final class MeasureMatch {
  /**
   * A coin that lost more than this is worn slick, or it is another coin (common practice, no
   * source: 5 to 10 %).
   */
  private static final BigDecimal WORN = new BigDecimal("0.93");

  private static final BigDecimal HEAVY = new BigDecimal("1.02");

  /** Half of the last figure that a kitchen scale shows. */
  private static final BigDecimal ROUNDING = new BigDecimal("0.06");

  /** Two standards closer than this cannot be told apart by the scale. */
  private static final BigDecimal CLOSE = new BigDecimal("0.02");

  private static final BigDecimal DIAMETER_SHARE = new BigDecimal("0.035");
  private static final BigDecimal DIAMETER_ROUNDING = new BigDecimal("0.3");

  private MeasureMatch() {}

  /**
   * Whether the mass can be that of a coin of this standard; true if the standard's mass is not
   * known.
   */
  public static boolean mass(CoinStandard standard, Mass measured) {
    Optional<Mass> gross = standard.specification().grossMass();
    if (gross.isEmpty()) {
      return true;
    }
    BigDecimal grams = gross.get().grams();
    BigDecimal least = grams.multiply(WORN).subtract(ROUNDING);
    BigDecimal most = grams.multiply(HEAVY).add(ROUNDING);
    return measured.grams().compareTo(least) >= 0 && measured.grams().compareTo(most) <= 0;
  }

  /** How far the mass lies from the standard's, as a share of it. */
  public static BigDecimal distance(CoinStandard standard, Mass measured) {
    BigDecimal grams =
        standard.specification().grossMass().map(Mass::grams).orElse(measured.grams());
    return measured.grams().subtract(grams).abs().divide(grams, Decimals.DIVISION);
  }

  /** Whether one distance is so near another that the scale cannot decide. */
  public static boolean isClose(BigDecimal distance, BigDecimal best) {
    return distance.subtract(best).compareTo(CLOSE) <= 0;
  }

  public static boolean diameter(CoinStandard standard, BigDecimal measured) {
    Optional<BigDecimal> known = standard.specification().diameterMillimetres();
    if (known.isEmpty()) {
      return true;
    }
    BigDecimal slack = known.get().multiply(DIAMETER_SHARE).add(DIAMETER_ROUNDING);
    return known.get().subtract(measured).abs().compareTo(slack) <= 0;
  }
}
