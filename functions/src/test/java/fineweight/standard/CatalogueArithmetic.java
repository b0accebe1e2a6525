package fineweight.standard;

import fineweight.metal.Metal;
import fineweight.quantity.Fineness;
import fineweight.quantity.Mass;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What the figures of one row must fulfil among themselves. */
final class CatalogueArithmetic {
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

  /** A finest alloy may leave a thousandth unnamed. */
  static boolean namesEverything(CoinStandard standard) {
    return standard.specification().composition().unnamedPerMille().compareTo(BigDecimal.ONE) <= 0;
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
    BigDecimal share =
        product
            .subtract(stated.get().grams())
            .abs()
            .divide(stated.get().grams(), MathContext.DECIMAL64);
    BigDecimal allowed =
        fineness.perMille().compareTo(FINE_METAL) >= 0 ? ISSUER_ROUNDING : ROUNDING;
    return share.compareTo(allowed) <= 0
        || standard.evidence().note().toLowerCase(Locale.ROOT).contains("use the fine mass");
  }
}
