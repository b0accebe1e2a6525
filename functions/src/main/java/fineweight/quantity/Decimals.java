package fineweight.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Objects;

/** One way to hold a decimal, so that 0.9 and 0.900 are one value wherever two are compared. */
public final class Decimals {
  /** 34 significant digits (IEEE 754 decimal128): far beyond what any cell or scale can show. */
  public static final MathContext DIVISION = new MathContext(34, RoundingMode.HALF_EVEN);

  private Decimals() {}

  /**
   * The same number without trailing zeros and never in scientific scale, so that equal numbers are
   * equal objects.
   */
  public static BigDecimal normal(BigDecimal value) {
    Objects.requireNonNull(value, "value");
    if (value.signum() == 0) {
      return BigDecimal.ZERO;
    }
    BigDecimal stripped = value.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}
