package fineweight.sheet.measure;

import fineweight.metal.Composition;
import fineweight.metal.Metal;
import fineweight.quantity.Decimals;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;

/**
 * The density of an alloy if its metals keep their volumes: the mass of the whole by the sum of the
 * volumes of the parts. Real alloys differ by a per cent or so. Densities at room temperature as
 * handbooks of chemistry and physics give them.
 */
final class AlloyDensity {
  private static final Map<Metal, String> GRAMS_PER_CUBIC_CENTIMETRE =
      Map.ofEntries(
          Map.entry(Metal.GOLD, "19.32"),
          Map.entry(Metal.SILVER, "10.49"),
          Map.entry(Metal.PLATINUM, "21.45"),
          Map.entry(Metal.PALLADIUM, "12.02"),
          Map.entry(Metal.RHODIUM, "12.41"),
          Map.entry(Metal.NIOBIUM, "8.57"),
          Map.entry(Metal.TANTALUM, "16.65"),
          Map.entry(Metal.TITANIUM, "4.51"),
          Map.entry(Metal.COPPER, "8.96"),
          Map.entry(Metal.NICKEL, "8.91"),
          Map.entry(Metal.ZINC, "7.14"),
          Map.entry(Metal.TIN, "7.29"),
          Map.entry(Metal.MANGANESE, "7.3"),
          Map.entry(Metal.ALUMINIUM, "2.70"),
          Map.entry(Metal.IRON, "7.87"),
          Map.entry(Metal.CHROMIUM, "7.19"),
          Map.entry(Metal.MAGNESIUM, "1.74"),
          Map.entry(Metal.LEAD, "11.34"),
          Map.entry(Metal.ANTIMONY, "6.69"));

  private AlloyDensity() {}

  /**
   * Grams for one cubic centimetre, to 34 significant digits.
   *
   * @return empty if the split of a part or a part of the alloy is not known
   */
  static Optional<BigDecimal> of(Composition alloy) {
    if (alloy.unnamedPerMille().signum() != 0) {
      return Optional.empty();
    }
    BigDecimal volume = BigDecimal.ZERO;
    for (Composition.Part part : alloy.parts()) {
      if (part.metals().size() > 1) {
        return Optional.empty();
      }
      String density = GRAMS_PER_CUBIC_CENTIMETRE.get(part.metals().iterator().next());
      volume =
          volume.add(part.share().perMille().divide(new BigDecimal(density), Decimals.DIVISION));
    }
    return Optional.of(new BigDecimal("1000").divide(volume, Decimals.DIVISION));
  }
}
