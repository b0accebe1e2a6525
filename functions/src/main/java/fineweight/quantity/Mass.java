package fineweight.quantity;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * A mass, held exactly in grams; zero or positive. Immutable.
 *
 * @param grams the mass in grams, zero or positive, trailing zeros removed
 */
public record Mass(BigDecimal grams) implements Comparable<Mass> {
  public static final Mass ZERO = new Mass(BigDecimal.ZERO);

  /**
   * @throws IllegalArgumentException if the mass is negative
   */
  public Mass {
    grams = Decimals.normal(Objects.requireNonNull(grams, "grams"));
    if (grams.signum() < 0) {
      throw new IllegalArgumentException(
          "a mass is zero or positive, not " + grams.toPlainString() + " g");
    }
  }

  public static Mass ofGrams(BigDecimal grams) {
    return new Mass(grams);
  }

  public static Mass ofGrams(String grams) {
    return new Mass(new BigDecimal(grams));
  }

  public static Mass ofGrains(BigDecimal grains) {
    return of(grains, MassUnit.GRAIN);
  }

  public static Mass ofTroyOunces(BigDecimal troyOunces) {
    return of(troyOunces, MassUnit.TROY_OUNCE);
  }

  /** Exact: every unit is a finite decimal of grams. */
  public static Mass of(BigDecimal amount, MassUnit unit) {
    Objects.requireNonNull(amount, "amount");
    return new Mass(amount.multiply(unit.grams()));
  }

  /**
   * This mass in another unit, to 34 significant digits (exact for grams, kilograms and tonnes).
   */
  public BigDecimal in(MassUnit unit) {
    return Decimals.normal(grams.divide(unit.grams(), Decimals.DIVISION));
  }

  /** This mass in troy ounces, to 34 significant digits. */
  public BigDecimal troyOunces() {
    return in(MassUnit.TROY_OUNCE);
  }

  public Mass plus(Mass other) {
    return new Mass(grams.add(other.grams));
  }

  /**
   * @param factor zero or positive
   */
  public Mass times(BigDecimal factor) {
    return new Mass(grams.multiply(factor));
  }

  public boolean isZero() {
    return grams.signum() == 0;
  }

  @Override
  public int compareTo(Mass other) {
    return grams.compareTo(other.grams);
  }

  @Override
  public String toString() {
    return grams.toPlainString() + " g";
  }
}
