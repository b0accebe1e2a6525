package fineweight.standard;

import fineweight.metal.Composition;
import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.Fineness;
import fineweight.quantity.Mass;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * The physical standard of a coin. Immutable.
 *
 * @param composition the alloy of the whole coin
 * @param grossMass the whole mass; empty if no figure is known
 * @param statedFineMass the mass of the main precious metal where the law or the issuer states it;
 *     it counts before gross mass x fineness
 * @param diameterMillimetres if known
 * @param thicknessMillimetres if known
 * @param magnetic whether a magnet attracts the coin, if known
 */
public record Specification(
    Composition composition,
    Optional<Mass> grossMass,
    Optional<Mass> statedFineMass,
    Optional<BigDecimal> diameterMillimetres,
    Optional<BigDecimal> thicknessMillimetres,
    Optional<Boolean> magnetic) {

  /**
   * @throws IllegalArgumentException if the stated fine mass exceeds the gross mass, or stands
   *     without a precious metal
   */
  public Specification {
    if (statedFineMass.isPresent()) {
      if (composition.mainPreciousMetal().isEmpty()) {
        throw new IllegalArgumentException(
            "a fine mass is stated, but no gold, silver, platinum or palladium");
      }
      if (grossMass.isPresent() && statedFineMass.get().compareTo(grossMass.get()) > 0) {
        throw new IllegalArgumentException(
            "the fine mass " + statedFineMass.get() + " exceeds the gross mass " + grossMass.get());
      }
    }
  }

  /** The mass of each metal whose share is known, in one piece as struck. */
  public FineContent fineContent() {
    Map<Metal, Mass> masses = new EnumMap<>(Metal.class);
    for (Metal metal : composition.metals()) {
      fineMass(metal).ifPresent(mass -> masses.put(metal, mass));
    }
    return new FineContent(masses);
  }

  private Optional<Mass> fineMass(Metal metal) {
    if (statedFineMass.isPresent() && composition.mainPreciousMetal().equals(Optional.of(metal))) {
      return statedFineMass;
    }
    Optional<Fineness> fineness = composition.fineness(metal);
    return grossMass.flatMap(gross -> fineness.map(share -> share.of(gross)));
  }

  public boolean isPrecious() {
    return composition.mainPreciousMetal().isPresent();
  }
}
