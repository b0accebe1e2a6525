package fineweight.valuation;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.money.Amounts;
import java.util.Objects;
import java.util.Set;
import org.joda.money.BigMoney;

/**
 * A row of pieces with all that was worked out for it. Immutable.
 *
 * @param piece what was valued
 * @param content the metal left in all its pieces
 * @param melt the metal at spot, no payout taken off, exact
 * @param worth what it is worth, and why
 * @param curve the worth at other spot prices
 * @param unpriced precious metals in it that have no spot price: they count nothing in any figure
 */
public record Valuation(
    Piece piece,
    FineContent content,
    BigMoney melt,
    Worth worth,
    WorthCurve curve,
    Set<Metal> unpriced) {
  public Valuation {
    Objects.requireNonNull(piece, "piece");
    Objects.requireNonNull(content, "content");
    Objects.requireNonNull(worth, "worth");
    Objects.requireNonNull(curve, "curve");
    melt = Amounts.normal(melt);
    unpriced = Set.copyOf(unpriced);
  }
}
