package fineweight.lot;

import fineweight.money.Amounts;
import fineweight.quantity.Decimals;
import java.math.BigDecimal;
import java.util.Objects;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What a buyer pays beside the price of a lot. Premium and tax are each rounded half up to the
 * cent. Tax falls on price and premium, and on the postage only where the terms say so (places
 * differ). Immutable.
 *
 * @param premiumPercent the buyer's premium, per cent of the price, zero or more
 * @param taxPercent the tax, per cent, zero or more
 * @param postage postage and insurance, zero or more
 * @param taxOnPostage whether the tax falls on the postage too
 */
public record BuyingTerms(
    BigDecimal premiumPercent, BigDecimal taxPercent, Money postage, boolean taxOnPostage) {
  /**
   * @throws IllegalArgumentException if a figure is negative
   */
  public BuyingTerms {
    premiumPercent = notNegative(premiumPercent, "the buyer's premium");
    taxPercent = notNegative(taxPercent, "the tax");
    if (Objects.requireNonNull(postage, "postage").isNegative()) {
      throw new IllegalArgumentException("the postage is zero or more, not " + postage);
    }
  }

  /** Nothing beside the price. */
  public static BuyingTerms none(CurrencyUnit currency) {
    return new BuyingTerms(BigDecimal.ZERO, BigDecimal.ZERO, Money.zero(currency), false);
  }

  /**
   * The cost of a lot at a price.
   *
   * @param price zero or more, in the currency of the postage
   */
  public LotCost at(Money price) {
    Money premium = Amounts.atCell(Amounts.percentOf(price.toBigMoney(), premiumPercent));
    Money taxed = price.plus(premium);
    if (taxOnPostage) {
      taxed = taxed.plus(postage);
    }
    Money tax = Amounts.atCell(Amounts.percentOf(taxed.toBigMoney(), taxPercent));
    return new LotCost(price, premium, tax, postage);
  }

  private static BigDecimal notNegative(BigDecimal percent, String name) {
    if (Objects.requireNonNull(percent, name).signum() < 0) {
      throw new IllegalArgumentException(
          name + " is zero or more per cent, not " + percent.toPlainString());
    }
    return Decimals.normal(percent);
  }
}
