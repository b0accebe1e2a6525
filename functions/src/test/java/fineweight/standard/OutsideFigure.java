package fineweight.standard;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.Mass;
import fineweight.quantity.MassUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A figure that stands in a text outside the project, for one standard.
 *
 * <p>The field is the quantity, perhaps with a metal and the decimals that the text prints: {@code
 * gross_gr}, {@code fine_g:Ag}, {@code gross_g~2}. A fineness or a mass may be a fraction: so many
 * grams to so many pieces. Without decimals masses count exactly, fractions to the eight decimals
 * that the catalogue writes; ounces and prices count to the decimals of the expected figure.
 */
record OutsideFigure(
    String id, String quantity, Metal metal, int decimals, String expected, String source) {
  private static final int EXACT = -1;
  private static final BigDecimal FRACTION_ROUNDING = new BigDecimal("0.00005");

  /** The catalogue writes masses that do not come out even to eight decimals. */
  private static final int FRACTION_DECIMALS = 8;

  private static final BigDecimal HALF = new BigDecimal("0.5");

  static List<OutsideFigure> all(String... resources) {
    return ResourceTable.rowsOf(resources).stream().map(OutsideFigure::of).toList();
  }

  private static OutsideFigure of(Map<String, String> row) {
    String[] rounded = row.get("field").split("~", -1);
    String[] parts = rounded[0].split(":", -1);
    return new OutsideFigure(
        row.get("id"),
        parts[0],
        parts.length > 1 ? Metal.ofCode(parts[1]).orElseThrow() : Metal.COPPER,
        rounded.length > 1 ? Integer.parseInt(rounded[1]) : EXACT,
        row.get("expected"),
        row.get("source"));
  }

  /** Whether the figure is one of metal and not of size. */
  boolean isOfMetal() {
    return !quantity.equals("diameter_mm");
  }

  /** Whether the standard says the same. */
  boolean holdsFor(CoinStandard standard) {
    Specification specification = standard.specification();
    FineContent content = standard.fineContent();
    return switch (quantity) {
      case "gross_gr" -> isMass(specification.grossMass(), MassUnit.GRAIN);
      case "gross_g" -> isMass(specification.grossMass(), MassUnit.GRAM);
      case "fine_gr" -> isMass(Optional.of(content.of(metal)), MassUnit.GRAIN);
      case "fine_g" -> isMass(Optional.of(content.of(metal)), MassUnit.GRAM);
      case "fineness" -> isFineness(specification);
      case "ozt_exact" -> isMass(Optional.of(content.of(metal)), MassUnit.TROY_OUNCE);
      case "ozt" -> isRounded(content.troyOunces(metal));
      case "ozt_per_dollar" ->
          isRounded(content.troyOunces(metal).divide(face(standard), MathContext.DECIMAL64));
      case "dollars_per_ozt" ->
          content.troyOunces(metal).signum() > 0
              && isRounded(face(standard).divide(content.troyOunces(metal), MathContext.DECIMAL64));
      case "diameter_mm" ->
          specification
              .diameterMillimetres()
              .filter(diameter -> diameter.compareTo(new BigDecimal(expected)) == 0)
              .isPresent();
      default -> throw new IllegalStateException("unknown field " + quantity + " of " + id);
    };
  }

  private static BigDecimal face(CoinStandard standard) {
    return standard.issue().faceValue().orElseThrow();
  }

  private boolean isMass(Optional<Mass> mass, MassUnit unit) {
    if (mass.isEmpty()) {
      return false;
    }
    if (expected.indexOf('/') > 0) {
      BigDecimal rounding = HALF.movePointLeft(decimals == EXACT ? FRACTION_DECIMALS : decimals);
      BigDecimal difference = mass.get().in(unit).subtract(fraction(BigDecimal.ONE)).abs();
      return difference.compareTo(rounding) <= 0;
    }
    if (decimals == EXACT) {
      return mass.get().compareTo(Mass.of(new BigDecimal(expected), unit)) == 0;
    }
    BigDecimal printed = mass.get().in(unit).setScale(decimals, RoundingMode.HALF_UP);
    return printed.compareTo(new BigDecimal(expected)) == 0;
  }

  private boolean isFineness(Specification specification) {
    BigDecimal found =
        specification.composition().fineness(metal).map(share -> share.perMille()).orElse(null);
    if (found == null) {
      return false;
    }
    if (expected.indexOf('/') < 0) {
      return found.compareTo(new BigDecimal(expected)) == 0;
    }
    BigDecimal wanted = fraction(new BigDecimal("1000"));
    return found.subtract(wanted).abs().compareTo(FRACTION_ROUNDING) <= 0;
  }

  private BigDecimal fraction(BigDecimal times) {
    int slash = expected.indexOf('/');
    return new BigDecimal(expected.substring(0, slash))
        .multiply(times)
        .divide(new BigDecimal(expected.substring(slash + 1)), MathContext.DECIMAL64);
  }

  private boolean isRounded(BigDecimal found) {
    BigDecimal wanted = new BigDecimal(expected);
    return found.setScale(wanted.scale(), RoundingMode.HALF_UP).compareTo(wanted) == 0;
  }

  @Override
  public String toString() {
    return id + ": " + quantity + " " + metal.symbol() + " should be " + expected + " by " + source;
  }
}
