package fineweight.column;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.Decimals;
import fineweight.spot.SpotPrices;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;

/**
 * The live formula of a melt cell, in the form that every office reads, and the same sum in exact
 * decimals. The result is rounded once, half up, to the currency's places; an office that computes
 * in binary may differ by one in the last place on an exact tie and nowhere else.
 */
public final class MeltFormula {
  /** What a cell can hold of a number. */
  private static final MathContext CELL = new MathContext(15, RoundingMode.HALF_EVEN);

  private final SpotPrices spot;
  private final BigDecimal left;

  /**
   * @param wear the share of the metal that use has taken, 0 to less than 1
   */
  public MeltFormula(SpotPrices spot, BigDecimal wear) {
    this.spot = spot;
    this.left = BigDecimal.ONE.subtract(wear);
  }

  /** The name of the cell that holds a metal's price. */
  public static String priceName(Metal metal) {
    return "Fineweight_" + metal.ounceCode().orElse(metal.symbol());
  }

  /** The name of the cell that holds the share lost by wear. */
  public static String wearName() {
    return "Fineweight_wear";
  }

  /**
   * Melt of a content, rounded; empty if a precious metal in it has no price or nothing in it has
   * one.
   */
  public Optional<BigDecimal> result(FineContent content) {
    if (!content.hasPrecious() || !spot.missingFor(content).isEmpty()) {
      return Optional.empty();
    }
    BigDecimal sum = BigDecimal.ZERO;
    for (Metal metal : content.masses().keySet()) {
      if (metal.isPrecious()) {
        BigDecimal price = spot.of(metal).orElseThrow().perTroyOunce();
        sum = sum.add(content.troyOunces(metal).multiply(price));
      }
    }
    return Optional.of(
        sum.multiply(left).setScale(spot.currency().getDecimalPlaces(), RoundingMode.HALF_UP));
  }

  /**
   * @param cells the cell that holds the ounces, such as {@code N7}, by metal
   */
  public String ofCells(FineContent content, Map<Metal, String> cells) {
    StringJoiner sum = new StringJoiner("+");
    content.masses().keySet().stream()
        .filter(Metal::isPrecious)
        .forEach(metal -> sum.add(cells.get(metal) + "*" + priceName(metal)));
    return rounded(sum);
  }

  /** The same for ounces that stand in no cell. */
  public String ofConstants(FineContent content) {
    StringJoiner sum = new StringJoiner("+");
    content.masses().keySet().stream()
        .filter(Metal::isPrecious)
        .forEach(
            metal ->
                sum.add(
                    ounces(content.troyOunces(metal)).toPlainString() + "*" + priceName(metal)));
    return rounded(sum);
  }

  private String rounded(StringJoiner sum) {
    boolean single = !sum.toString().contains("+");
    String body = single ? sum.toString() : "(" + sum + ")";
    return "ROUND(" + body + "*(1-" + wearName() + ")," + spot.currency().getDecimalPlaces() + ")";
  }

  /** Ounces as a cell holds them: 15 significant digits. */
  public static BigDecimal ounces(BigDecimal ounces) {
    return Decimals.normal(ounces.round(CELL));
  }
}
