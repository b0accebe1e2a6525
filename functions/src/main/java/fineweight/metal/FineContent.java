package fineweight.metal;

import fineweight.quantity.Mass;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What a piece, or several together, hold of each metal. Metals with nothing are left out.
 * Immutable.
 *
 * @param masses the mass of each metal, none of them zero
 */
public record FineContent(Map<Metal, Mass> masses) {
  public static final FineContent NONE = new FineContent(Map.of());

  public FineContent {
    Map<Metal, Mass> kept = new EnumMap<>(Metal.class);
    masses.forEach(
        (metal, mass) -> {
          if (!mass.isZero()) {
            kept.put(metal, mass);
          }
        });
    masses = Collections.unmodifiableMap(kept);
  }

  public Mass of(Metal metal) {
    return masses.getOrDefault(metal, Mass.ZERO);
  }

  /** Fine troy ounces of a metal, to 34 significant digits. */
  public BigDecimal troyOunces(Metal metal) {
    return of(metal).troyOunces();
  }

  public boolean hasPrecious() {
    return masses.keySet().stream().anyMatch(Metal::isPrecious);
  }

  public FineContent plus(FineContent other) {
    Map<Metal, Mass> sum = new EnumMap<>(Metal.class);
    sum.putAll(masses);
    other.masses.forEach((metal, mass) -> sum.merge(metal, mass, Mass::plus));
    return new FineContent(sum);
  }

  /**
   * @param factor a number of pieces, or a share that wear left; zero or positive
   */
  public FineContent times(BigDecimal factor) {
    Map<Metal, Mass> product = new EnumMap<>(Metal.class);
    masses.forEach((metal, mass) -> product.put(metal, mass.times(factor)));
    return new FineContent(product);
  }
}
