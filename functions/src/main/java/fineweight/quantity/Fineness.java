package fineweight.quantity;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * The share of one metal in an alloy, in parts per thousand, 0 to 1000. Immutable.
 *
 * @param perMille parts per thousand, 0 to 1000, trailing zeros removed
 */
public record Fineness(BigDecimal perMille) implements Comparable<Fineness> {
  private static final BigDecimal THOUSAND = new BigDecimal("1000");

  /**
   * @throws IllegalArgumentException if the value lies outside 0 to 1000
   */
  public Fineness {
    perMille = Decimals.normal(Objects.requireNonNull(perMille, "perMille"));
    if (perMille.signum() < 0 || perMille.compareTo(THOUSAND) > 0) {
      throw new IllegalArgumentException(
          "a fineness lies between 0 and 1000 parts per thousand, not " + perMille.toPlainString());
    }
  }

  public static Fineness ofPerMille(BigDecimal perMille) {
    return new Fineness(perMille);
  }

  public static Fineness ofPerMille(String perMille) {
    return new Fineness(new BigDecimal(perMille));
  }

  /** The mass of this metal in the given gross mass, exactly. */
  public Mass of(Mass gross) {
    return new Mass(gross.grams().multiply(perMille).movePointLeft(3));
  }

  @Override
  public int compareTo(Fineness other) {
    return perMille.compareTo(other.perMille);
  }

  @Override
  public String toString() {
    return perMille.toPlainString();
  }
}
