package fineweight.sheet.measure;

import fineweight.quantity.Decimals;
import fineweight.quantity.Mass;
import fineweight.standard.CoinStandard;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/** One piece on the scale against its standard. */
final class MassCheck {
  /** A coin worn slick may have lost five to ten per cent (common practice, no source). */
  private static final BigDecimal SLICK = new BigDecimal("0.10");

  /** Half of the last figure of a scale that shows tenths of a gram. */
  private static final BigDecimal SCALE = new BigDecimal("0.05");

  private MassCheck() {}

  /**
   * The finding in words, against the standard that comes nearest.
   *
   * @param standards at least one that has a mass
   * @param own the collector's own tolerance, if he gave one
   */
  static String words(List<CoinStandard> standards, Mass measured, Optional<Mass> own) {
    CoinStandard nearest = standards.get(0);
    for (CoinStandard standard : standards) {
      if (distance(standard, measured).compareTo(distance(nearest, measured)) < 0) {
        nearest = standard;
      }
    }
    Mass struck = mass(nearest);
    Optional<Mass> allowed = own.isPresent() ? own : MintTolerance.of(nearest);
    String among = standards.size() > 1 ? ", nearest of several: " + nearest.id() : "";
    return finding(measured.grams(), struck.grams(), allowed.map(Mass::grams))
        + " ("
        + measured
        + " against "
        + struck
        + allowed.map(mass -> ", allowed " + mass).orElse(", the mint's tolerance is not known")
        + ")"
        + among;
  }

  private static String finding(
      BigDecimal measured, BigDecimal struck, Optional<BigDecimal> allowed) {
    BigDecimal difference = measured.subtract(struck);
    BigDecimal percent =
        difference
            .abs()
            .movePointRight(2)
            .divide(struck, Decimals.DIVISION)
            .setScale(1, RoundingMode.HALF_UP);
    if (allowed.isPresent() && difference.abs().compareTo(allowed.get()) <= 0) {
      return "as struck";
    }
    if (difference.abs().compareTo(SCALE) <= 0) {
      return "as struck within 0.05 g";
    }
    if (difference.signum() > 0) {
      return percent + " % too heavy";
    }
    return difference.negate().compareTo(struck.multiply(SLICK)) <= 0
        ? percent + " % light, as wear explains"
        : percent + " % light, more than wear explains";
  }

  private static BigDecimal distance(CoinStandard standard, Mass measured) {
    return mass(standard).grams().subtract(measured.grams()).abs();
  }

  private static Mass mass(CoinStandard standard) {
    return standard.specification().grossMass().orElseThrow();
  }
}
