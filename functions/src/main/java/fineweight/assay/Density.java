package fineweight.assay;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fineweight.metal.Composition;
import fineweight.metal.Metal;
import fineweight.quantity.Decimals;
import fineweight.quantity.Mass;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * A density in grams per cubic centimetre, between two bounds where the alloy's split is not known.
 * Immutable.
 *
 * <p>The density of an alloy is taken by mass fractions: 1 / sum(share / density of the metal), as
 * if the volumes added up. Example from metal-working handbooks: gold 583, silver 104, copper 313
 * give 13.33.
 *
 * @param least more than zero
 * @param most not less than the least
 */
public record Density(BigDecimal least, BigDecimal most) {
  /**
   * Water tests at home are good to about this share: bubbles, the wire and the scale (common
   * practice, no source).
   */
  private static final BigDecimal SLACK = new BigDecimal("0.04");

  /** Parts per thousand that a source may leave unnamed without changing the density much. */
  private static final BigDecimal LITTLE = new BigDecimal("5");

  private static final Map<Metal, BigDecimal> METALS = load();

  private static Map<Metal, BigDecimal> load() {
    Map<Metal, BigDecimal> densities = new EnumMap<>(Metal.class);
    for (NamedCsvRecord row : AssayRows.of("densities.csv")) {
      Metal metal =
          Metal.ofCode(row.getField("metal"))
              .orElseThrow(() -> new IllegalStateException("no metal " + row.getField("metal")));
      densities.put(metal, new BigDecimal(row.getField("density")));
    }
    return densities;
  }

  /**
   * The density of an alloy; empty if a part's density is not in the table or much of the alloy is
   * not named.
   */
  public static Optional<Density> of(Composition alloy) {
    if (alloy.unnamedPerMille().compareTo(LITTLE) > 0) {
      return Optional.empty();
    }
    BigDecimal most = BigDecimal.ZERO;
    BigDecimal least = BigDecimal.ZERO;
    BigDecimal named = BigDecimal.ZERO;
    for (Composition.Part part : alloy.parts()) {
      BigDecimal heavy = BigDecimal.ZERO;
      BigDecimal light = null;
      for (Metal metal : part.metals()) {
        BigDecimal density = METALS.get(metal);
        if (density == null) {
          return Optional.empty();
        }
        heavy = heavy.max(density);
        light = light == null ? density : light.min(density);
      }
      BigDecimal share = part.share().perMille();
      named = named.add(share);
      most = most.add(share.divide(heavy, Decimals.DIVISION));
      least = least.add(share.divide(light, Decimals.DIVISION));
    }
    return Optional.of(
        new Density(named.divide(least, Decimals.DIVISION), named.divide(most, Decimals.DIVISION)));
  }

  /**
   * The density of a piece: mass in air / (mass in air - mass hanging in water) (Archimedes; water
   * at room temperature counts as 1 gram per cubic centimetre).
   *
   * @return empty if the mass in water is not less than that in air
   */
  public static Optional<BigDecimal> measured(Mass inAir, Mass inWater) {
    BigDecimal lift = inAir.grams().subtract(inWater.grams());
    return lift.signum() > 0 && inWater.grams().signum() > 0
        ? Optional.of(inAir.grams().divide(lift, Decimals.DIVISION))
        : Optional.empty();
  }

  /** Whether a density measured at home can be that of this alloy. */
  public boolean allows(BigDecimal measured) {
    BigDecimal low = least.multiply(BigDecimal.ONE.subtract(SLACK));
    BigDecimal high = most.multiply(BigDecimal.ONE.add(SLACK));
    return measured.compareTo(low) >= 0 && measured.compareTo(high) <= 0;
  }

  /** With one decimal, such as {@code 10.3}. */
  @Override
  public String toString() {
    BigDecimal middle = least.add(most).divide(new BigDecimal("2"), Decimals.DIVISION);
    return middle.setScale(1, RoundingMode.HALF_UP).toPlainString();
  }
}
