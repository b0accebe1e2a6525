package fineweight.price;

import fineweight.metal.Metal;
import fineweight.money.Amounts;
import fineweight.quantity.Decimals;
import fineweight.quantity.Mass;
import fineweight.spot.SpotPrice;
import fineweight.valuation.Payout;
import fineweight.valuation.Wear;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.BigMoney;

/**
 * A quote for United States 90 % dimes, quarters and halves as so many times their face value
 * (common practice of the trade). From 1873 on one dollar of them weighs 25 g and holds 22.5 g of
 * silver as struck (Coinage Act of 1873, section 15; Revised Statutes, section 3514). Silver
 * dollars hold more and are quoted apart. Immutable.
 *
 * @param times zero or more
 */
public record TimesFace(BigDecimal times) {
  /** The silver in one dollar of face as struck. */
  public static final Mass SILVER_PER_DOLLAR = Mass.ofGrams("22.5");

  /**
   * @throws IllegalArgumentException if the quote is negative
   */
  public TimesFace {
    times = Decimals.normal(times);
    if (times.signum() < 0) {
      throw new IllegalArgumentException(
          "a quote of times face is zero or more, not " + times.toPlainString());
    }
  }

  /**
   * The quote at which the coins bring their melt, to 34 significant digits.
   *
   * @param silver the spot price of silver
   * @param wear the allowance for wear
   * @throws IllegalArgumentException if the price is of another metal
   */
  public static TimesFace atMelt(SpotPrice silver, Wear wear) {
    return new TimesFace(meltOfOneDollar(silver, wear));
  }

  /** What the quote pays for a face value. */
  public BigMoney of(BigMoney face) {
    return Amounts.normal(face.multipliedBy(times));
  }

  /**
   * The same quote as a payout: per cent of melt, rounded half even to six places.
   *
   * @param silver the spot price of silver
   * @param wear the allowance for wear that melt is reckoned with
   * @throws IllegalArgumentException if the price is of another metal
   */
  public Payout.PercentOfMelt asPayout(SpotPrice silver, Wear wear) {
    BigDecimal percent =
        times
            .movePointRight(2)
            .divide(meltOfOneDollar(silver, wear), Decimals.DIVISION)
            .setScale(6, RoundingMode.HALF_EVEN);
    return new Payout.PercentOfMelt(percent);
  }

  private static BigDecimal meltOfOneDollar(SpotPrice silver, Wear wear) {
    if (silver.metal() != Metal.SILVER) {
      throw new IllegalArgumentException(
          "times face is quoted for silver, not for " + silver.metal().word());
    }
    Mass left = SILVER_PER_DOLLAR.times(wear.remaining());
    if (left.isZero()) {
      throw new IllegalArgumentException("nothing is left of coins worn to nothing");
    }
    return silver.valueOf(left).getAmount();
  }
}
