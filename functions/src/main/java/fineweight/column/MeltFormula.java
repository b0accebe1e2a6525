package fineweight.column;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.Decimals;
import fineweight.quantity.MassUnit;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import fineweight.valuation.Payout;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.Function;

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
   * Melt of a content, rounded. Base metals take part where they are priced.
   *
   * @return empty if a precious metal in it has no price, or nothing in it has one
   */
  public Optional<BigDecimal> result(FineContent content) {
    boolean priced = content.masses().keySet().stream().anyMatch(spot.prices()::containsKey);
    if (!priced || !spot.missingFor(content).isEmpty()) {
      return Optional.empty();
    }
    BigDecimal sum = BigDecimal.ZERO;
    for (Metal metal : content.masses().keySet()) {
      if (metal.isPrecious()) {
        BigDecimal price = spot.of(metal).orElseThrow().perTroyOunce();
        sum = sum.add(content.troyOunces(metal).multiply(price));
      } else if (spot.of(metal).isPresent()) {
        sum = sum.add(tonnes(content, metal).multiply(perTonne(spot.of(metal).get())));
      }
    }
    return Optional.of(
        sum.multiply(left).setScale(spot.currency().getDecimalPlaces(), RoundingMode.HALF_UP));
  }

  /** Money for one tonne of a base metal, as the spot sheet shows it. */
  public static BigDecimal perTonne(SpotPrice price) {
    BigDecimal amount = price.amount().multiply(MassUnit.TONNE.grams());
    return Decimals.normal(amount.divide(price.unit().grams(), Decimals.DIVISION));
  }

  private static BigDecimal tonnes(FineContent content, Metal metal) {
    return content.of(metal).in(MassUnit.TONNE);
  }

  /**
   * @param cells the cell that holds the ounces, such as {@code N7}, by precious metal
   */
  public String ofCells(FineContent content, Map<Metal, String> cells) {
    StringJoiner sum = new StringJoiner("+");
    content.masses().keySet().stream()
        .filter(Metal::isPrecious)
        .forEach(metal -> sum.add(cells.get(metal) + "*" + priceName(metal)));
    addBase(content, sum);
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
    addBase(content, sum);
    return rounded(sum);
  }

  /**
   * What a buyer pays for the metals of a row, as a formula: each metal's part is at least zero.
   *
   * @param cells the cell that holds the ounces by precious metal
   * @param payouts the payout of each metal
   * @param pieces how many the row has
   */
  public String paidOfCells(
      FineContent content, Map<Metal, String> cells, Function<Metal, Payout> payouts, int pieces) {
    String worn = "*(1-" + wearName() + ")";
    StringJoiner sum = new StringJoiner("+");
    for (Metal metal : content.masses().keySet()) {
      if (spot.of(metal).isPresent()) {
        Payout payout = payouts.apply(metal);
        String mass =
            metal.isPrecious() ? cells.get(metal) : ounces(tonnes(content, metal)).toPlainString();
        String added =
            payout instanceof Payout.PerOunce quote
                ? signed(quote.money().getAmount())
                    + "*"
                    + (metal.isPrecious()
                        ? cells.get(metal)
                        : ounces(content.troyOunces(metal)).toPlainString())
                    + worn
                : payout instanceof Payout.PerPiece
                    ? signed(payout.added(BigDecimal.ZERO, pieces))
                    : "";
        sum.add(
            "MAX(0,"
                + mass
                + "*"
                + priceName(metal)
                + worn
                + "*"
                + payout.share().toPlainString()
                + added
                + ")");
      }
    }
    return "ROUND(" + sum + "," + spot.currency().getDecimalPlaces() + ")";
  }

  private static String signed(BigDecimal figure) {
    return (figure.signum() < 0 ? "" : "+") + figure.toPlainString();
  }

  /** Base metals have no column: their tonnes stand in the formula, their price is for a tonne. */
  private void addBase(FineContent content, StringJoiner sum) {
    content.masses().keySet().stream()
        .filter(metal -> !metal.isPrecious() && spot.of(metal).isPresent())
        .forEach(
            metal ->
                sum.add(ounces(tonnes(content, metal)).toPlainString() + "*" + priceName(metal)));
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
