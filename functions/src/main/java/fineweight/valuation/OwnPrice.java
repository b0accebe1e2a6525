package fineweight.valuation;

import fineweight.money.Amounts;
import java.util.Objects;
import org.joda.money.BigMoney;

/**
 * A price of the collector's own for one piece. Immutable.
 *
 * @param each money for one piece, zero or more
 * @param basis {@link Basis#STATED} for a figure he wrote for this very piece, {@link
 *     Basis#OWN_PRICE} for one from his list
 * @param origin where it stands and how old it is, for the sentence; may be empty
 */
public record OwnPrice(BigMoney each, Basis basis, String origin) {
  /**
   * @throws IllegalArgumentException if the price is negative or the basis is no own price
   */
  public OwnPrice {
    each = Amounts.normal(each);
    Objects.requireNonNull(origin, "origin");
    if (each.isNegative()) {
      throw new IllegalArgumentException("an own price is zero or more, not " + each);
    }
    if (basis != Basis.STATED && basis != Basis.OWN_PRICE) {
      throw new IllegalArgumentException("the basis of an own price cannot be " + basis);
    }
  }

  public static OwnPrice stated(BigMoney each) {
    return new OwnPrice(each, Basis.STATED, "");
  }

  public static OwnPrice listed(BigMoney each, String origin) {
    return new OwnPrice(each, Basis.OWN_PRICE, origin);
  }
}
