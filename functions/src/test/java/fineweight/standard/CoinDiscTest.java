package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.metal.Composition;
import fineweight.metal.Metal;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A coin is a disc that its metal must fit into. Densities in grams per cubic centimetre at room
 * temperature as any handbook of chemistry and physics gives them; volumes are added without
 * contraction, metals whose split is not known count in equal parts.
 */
class CoinDiscTest {
  private static final Map<Metal, String> DENSITY =
      Map.ofEntries(
          Map.entry(Metal.GOLD, "19.3"),
          Map.entry(Metal.SILVER, "10.49"),
          Map.entry(Metal.PLATINUM, "21.45"),
          Map.entry(Metal.PALLADIUM, "12.02"),
          Map.entry(Metal.COPPER, "8.96"),
          Map.entry(Metal.NICKEL, "8.908"),
          Map.entry(Metal.ZINC, "7.14"),
          Map.entry(Metal.TIN, "7.29"),
          Map.entry(Metal.MANGANESE, "7.3"),
          Map.entry(Metal.ALUMINIUM, "2.70"),
          Map.entry(Metal.IRON, "7.87"),
          Map.entry(Metal.CHROMIUM, "7.19"),
          Map.entry(Metal.MAGNESIUM, "1.74"),
          Map.entry(Metal.LEAD, "11.34"),
          Map.entry(Metal.NIOBIUM, "8.57"),
          Map.entry(Metal.TANTALUM, "16.65"),
          Map.entry(Metal.TITANIUM, "4.51"),
          Map.entry(Metal.RHODIUM, "12.41"),
          Map.entry(Metal.ANTIMONY, "6.69"));

  private static final BigDecimal QUARTER_PI = new BigDecimal("0.785398163");

  /**
   * The thinnest coins of the trade are just under half a millimetre, piedforts just under five.
   */
  @Test
  void theMetalMakesADiscOfPlausibleThickness() {
    List<String> odd = new ArrayList<>();
    for (CoinStandard standard : Standards.catalogue().all()) {
      solidThickness(standard)
          .filter(
              thickness ->
                  thickness.compareTo(new BigDecimal("0.4")) < 0
                      || thickness.compareTo(new BigDecimal("5")) > 0)
          .ifPresent(thickness -> odd.add(standard.id() + " would be " + thickness + " mm thick"));
    }
    assertThat(odd).isEmpty();
  }

  /** Relief and rim leave part of the disc empty, but never two fifths of it. */
  @Test
  void theMetalFillsMostOfTheStatedDisc() {
    List<String> odd = new ArrayList<>();
    for (CoinStandard standard : Standards.catalogue().all()) {
      Optional<BigDecimal> stated = standard.specification().thicknessMillimetres();
      Optional<BigDecimal> solid = solidThickness(standard);
      if (stated.isPresent() && solid.isPresent()) {
        BigDecimal filled = solid.get().divide(stated.get(), MathContext.DECIMAL32);
        if (filled.compareTo(BigDecimal.ONE) > 0 || filled.compareTo(new BigDecimal("0.6")) < 0) {
          odd.add(standard.id() + " fills " + filled + " of its disc");
        }
      }
    }
    assertThat(odd).isEmpty();
  }

  private static Optional<BigDecimal> solidThickness(CoinStandard standard) {
    Specification specification = standard.specification();
    if (specification.grossMass().isEmpty() || specification.diameterMillimetres().isEmpty()) {
      return Optional.empty();
    }
    BigDecimal diameter = specification.diameterMillimetres().get();
    BigDecimal area = diameter.multiply(diameter).multiply(QUARTER_PI);
    BigDecimal volume =
        specification
            .grossMass()
            .get()
            .grams()
            .multiply(new BigDecimal("1000"))
            .multiply(volumePerGram(specification.composition()));
    return Optional.of(volume.divide(area, MathContext.DECIMAL32));
  }

  private static BigDecimal volumePerGram(Composition composition) {
    BigDecimal volume = BigDecimal.ZERO;
    BigDecimal named = BigDecimal.ZERO;
    for (Composition.Part part : composition.parts()) {
      BigDecimal each =
          part.share()
              .perMille()
              .divide(BigDecimal.valueOf(part.metals().size()), MathContext.DECIMAL64);
      for (Metal metal : part.metals()) {
        volume = volume.add(each.divide(new BigDecimal(DENSITY.get(metal)), MathContext.DECIMAL64));
        named = named.add(each);
      }
    }
    return volume.divide(named, MathContext.DECIMAL64);
  }
}
