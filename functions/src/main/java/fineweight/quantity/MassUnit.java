package fineweight.quantity;

import java.math.BigDecimal;

/**
 * Units of mass with their exact factor to the gram.
 *
 * <p>Source of the factors: NIST Handbook 44, Appendix C (1 grain = 64.798 91 mg exactly; 1 troy
 * ounce = 480 grains; 1 pennyweight = 24 grains; 1 avoirdupois pound = 7000 grains).
 */
public enum MassUnit {
  GRAM("g", "1"),
  KILOGRAM("kg", "1000"),
  TONNE("t", "1000000"),
  GRAIN("gr", "0.06479891"),
  PENNYWEIGHT("dwt", "1.55517384"),
  TROY_OUNCE("ozt", "31.1034768"),
  AVOIRDUPOIS_OUNCE("oz av", "28.349523125"),
  POUND("lb", "453.59237");

  private final String symbol;
  private final BigDecimal grams;

  MassUnit(String symbol, String grams) {
    this.symbol = symbol;
    this.grams = new BigDecimal(grams);
  }

  public String symbol() {
    return symbol;
  }

  /** Grams in one of this unit, exactly. */
  public BigDecimal grams() {
    return grams;
  }
}
