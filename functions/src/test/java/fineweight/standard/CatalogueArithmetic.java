package fineweight.standard;

import fineweight.metal.Composition;
import fineweight.metal.Metal;
import fineweight.quantity.Fineness;
import fineweight.quantity.Mass;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What the figures of one row must fulfil among themselves. */
final class CatalogueArithmetic {
  private static final BigDecimal ZERO = BigDecimal.ZERO;
  private static final BigDecimal ROUNDING = new BigDecimal("0.0006");
  private static final BigDecimal ISSUER_ROUNDING = new BigDecimal("0.0011");
  private static final BigDecimal FINE_METAL = new BigDecimal("999");

  private CatalogueArithmetic() {}

  /** Grains are the law's figure; the grams beside them are the same figure rounded. */
  static boolean gramsAreGrainsRounded(Map<String, String> row) {
    if (row.get("mass_g").isEmpty() || row.get("mass_grains").isEmpty()) {
      return true;
    }
    BigDecimal grams = new BigDecimal(row.get("mass_g"));
    BigDecimal exact = Mass.ofGrains(new BigDecimal(row.get("mass_grains"))).grams();
    BigDecimal unit = BigDecimal.ONE.movePointLeft(grams.scale());
    return grams.subtract(exact).abs().compareTo(unit.multiply(new BigDecimal("0.5"))) <= 0;
  }

  /** An alloy adds up; only a fine metal alone may leave a thousandth unnamed. */
  static boolean namesEverything(CoinStandard standard) {
    Composition composition = standard.specification().composition();
    BigDecimal unnamed = composition.unnamedPerMille();
    return composition.parts().size() > 1
        ? unnamed.signum() == 0
        : unnamed.compareTo(BigDecimal.ONE) <= 0;
  }

  /**
   * Rounding makes up 0.06 %; from 999 on, where the issuer counts the whole piece as fine, 0.11 %;
   * more must stand in the note.
   */
  static boolean statedFineMassFits(CoinStandard standard) {
    Specification specification = standard.specification();
    Optional<Mass> stated = specification.statedFineMass();
    if (stated.isEmpty() || specification.grossMass().isEmpty()) {
      return true;
    }
    Metal main = specification.composition().mainPreciousMetal().orElseThrow();
    Fineness fineness = specification.composition().fineness(main).orElseThrow();
    BigDecimal product = fineness.of(specification.grossMass().get()).grams();
    BigDecimal difference = product.subtract(stated.get().grams()).abs();
    BigDecimal allowed =
        fineness.perMille().compareTo(FINE_METAL) >= 0 ? ISSUER_ROUNDING : ROUNDING;
    return difference.compareTo(stated.get().grams().multiply(allowed)) <= 0
        || standard.evidence().note().toLowerCase(Locale.ROOT).contains("use the fine mass");
  }

  /**
   * Whether the stated fine mass is gross mass x fineness, or for a fine metal the whole mass, as
   * far as both are written. Four decimals are taken as written where there are fewer: 7.5 g of a
   * law means 7.5000 g. A fineness in whole parts and that of a fine metal count as exact.
   */
  static boolean fineMassIsTheProduct(CoinStandard standard) {
    Specification specification = standard.specification();
    Optional<Mass> stated = specification.statedFineMass();
    if (stated.isEmpty() || specification.grossMass().isEmpty()) {
      return true;
    }
    Metal main = specification.composition().mainPreciousMetal().orElseThrow();
    Fineness fineness = specification.composition().fineness(main).orElseThrow();
    BigDecimal fine = stated.get().grams();
    BigDecimal gross = specification.grossMass().get().grams();
    BigDecimal product = fineness.of(specification.grossMass().get()).grams();
    BigDecimal share = fineness.perMille().movePointLeft(3);
    boolean isFineMetal = fineness.perMille().compareTo(FINE_METAL) >= 0;
    boolean isExactShare = isFineMetal || fineness.perMille().scale() <= 0;
    BigDecimal ofShare = isExactShare ? ZERO : gross.multiply(halfOfLastDigit(share, 3));
    BigDecimal rounding =
        share.multiply(halfOfLastDigit(gross, 4)).add(halfOfLastDigit(fine, 4)).add(ofShare);
    boolean isProduct = product.subtract(fine).abs().compareTo(rounding) <= 0;
    boolean isWhole =
        isFineMetal && gross.subtract(fine).abs().compareTo(halfOfLastDigit(gross, 4)) <= 0;
    return isProduct || isWhole;
  }

  private static BigDecimal halfOfLastDigit(BigDecimal written, int least) {
    return new BigDecimal("0.5").movePointLeft(Math.max(least, written.scale()));
  }
}
