package fineweight.valuation;

import fineweight.money.Amounts;
import fineweight.quantity.Decimals;
import java.math.BigDecimal;
import java.util.Objects;
import org.joda.money.BigMoney;

/**
 * What a buyer pays for metal, as people quote it: a percentage of melt, or so much above or below
 * spot for each ounce, or for each piece. What is paid is never below zero.
 */
public sealed interface Payout {
  /** All of the melt. */
  static Payout full() {
    return new PercentOfMelt(new BigDecimal("100"));
  }

  static Payout percent(String percent) {
    return new PercentOfMelt(new BigDecimal(percent));
  }

  /** The factor on melt. */
  BigDecimal share();

  /**
   * What is added to the share of melt, or taken off it where negative.
   *
   * @param troyOunces the fine ounces bought, zero or more
   * @param pieces the number of pieces bought, one or more
   */
  BigDecimal added(BigDecimal troyOunces, int pieces);

  /** The words for a sentence, such as {@code 95 % of melt}. */
  String words();

  /**
   * Refuses a melt in another currency.
   *
   * @throws IllegalArgumentException if the payout is quoted in money of another currency than the
   *     melt
   */
  void requireCurrencyOf(BigMoney melt);

  /**
   * A percentage of melt, also above 100.
   *
   * @param percent zero or more
   */
  record PercentOfMelt(BigDecimal percent) implements Payout {
    public PercentOfMelt {
      percent = Decimals.normal(Objects.requireNonNull(percent, "percent"));
      if (percent.signum() < 0) {
        throw new IllegalArgumentException(
            "a payout is zero or more per cent, not " + percent.toPlainString());
      }
    }

    @Override
    public BigDecimal share() {
      return percent.movePointLeft(2);
    }

    @Override
    public BigDecimal added(BigDecimal troyOunces, int pieces) {
      return BigDecimal.ZERO;
    }

    @Override
    public String words() {
      return percent.toPlainString() + " % of melt";
    }

    @Override
    public void requireCurrencyOf(BigMoney melt) {
      // A percentage has no currency.
    }
  }

  /**
   * Melt and a fixed sum for each fine troy ounce.
   *
   * @param money positive above spot, negative below it
   */
  record PerOunce(BigMoney money) implements Payout {
    public PerOunce {
      money = Amounts.normal(money);
    }

    @Override
    public BigDecimal share() {
      return BigDecimal.ONE;
    }

    @Override
    public BigDecimal added(BigDecimal troyOunces, int pieces) {
      return money.getAmount().multiply(troyOunces);
    }

    @Override
    public String words() {
      return "melt " + Payout.signed(money) + " an ounce";
    }

    @Override
    public void requireCurrencyOf(BigMoney melt) {
      Amounts.requireSame(melt.getCurrencyUnit(), money, "the payout per ounce");
    }
  }

  /**
   * Melt and a fixed sum for each piece.
   *
   * @param money positive above melt, negative below it
   */
  record PerPiece(BigMoney money) implements Payout {
    public PerPiece {
      money = Amounts.normal(money);
    }

    @Override
    public BigDecimal share() {
      return BigDecimal.ONE;
    }

    @Override
    public BigDecimal added(BigDecimal troyOunces, int pieces) {
      return money.getAmount().multiply(BigDecimal.valueOf(pieces));
    }

    @Override
    public String words() {
      return "melt " + Payout.signed(money) + " a piece";
    }

    @Override
    public void requireCurrencyOf(BigMoney melt) {
      Amounts.requireSame(melt.getCurrencyUnit(), money, "the payout per piece");
    }
  }

  private static String signed(BigMoney money) {
    return (money.isNegative() ? "minus " : "plus ") + Amounts.words(money.abs());
  }
}
