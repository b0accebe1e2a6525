package fineweight.money;

import fineweight.quantity.Decimals;
import java.math.BigDecimal;
import java.util.Objects;
import org.joda.money.Money;

/**
 * What a person wants to earn. Accounting texts keep two percentages apart: the margin is gain
 * divided by the selling price, the markup is gain divided by the cost. (A thing bought for 8 and
 * sold for 10 earns a margin of 20 % and a markup of 25 %.)
 */
public sealed interface WantedGain {
  /** Nothing: the cost back. */
  static WantedGain none() {
    return new Markup(BigDecimal.ZERO);
  }

  /** The words for a sentence, such as {@code a margin of 20 %}. */
  String words();

  /** What must be earned on a price and a cost, not rounded. */
  BigDecimal needed(Money price, Money cost);

  /**
   * Whether a sale earns it.
   *
   * @param price what the buyer pays
   * @param net what is left of it after fees and postage
   * @param cost what the piece or the lot had cost
   */
  default boolean isEarned(Money price, Money net, Money cost) {
    return net.minus(cost).getAmount().compareTo(needed(price, cost)) >= 0;
  }

  /**
   * A share of the selling price.
   *
   * @param percent 0 to 100
   */
  record Margin(BigDecimal percent) implements WantedGain {
    public Margin {
      percent = Amounts.requirePercent(percent, "the margin");
    }

    @Override
    public BigDecimal needed(Money price, Money cost) {
      return price.getAmount().multiply(percent.movePointLeft(2));
    }

    @Override
    public String words() {
      return "a margin of " + percent.toPlainString() + " % of the price";
    }
  }

  /**
   * A share of the cost.
   *
   * @param percent zero or more; may exceed 100
   */
  record Markup(BigDecimal percent) implements WantedGain {
    public Markup {
      percent = Decimals.normal(Objects.requireNonNull(percent, "percent"));
      if (percent.signum() < 0) {
        throw new IllegalArgumentException(
            "the markup is zero or more, not " + percent.toPlainString());
      }
    }

    @Override
    public BigDecimal needed(Money price, Money cost) {
      return cost.getAmount().multiply(percent.movePointLeft(2));
    }

    @Override
    public String words() {
      return percent.signum() == 0
          ? "the cost back"
          : "a markup of " + percent.toPlainString() + " % on the cost";
    }
  }

  /**
   * A fixed amount.
   *
   * @param money zero or more
   */
  record Fixed(Money money) implements WantedGain {
    public Fixed {
      if (Objects.requireNonNull(money, "money").isNegative()) {
        throw new IllegalArgumentException("the wanted gain is zero or more, not " + money);
      }
    }

    @Override
    public BigDecimal needed(Money price, Money cost) {
      return money.getAmount();
    }

    @Override
    public String words() {
      return "a gain of " + Amounts.words(money);
    }
  }
}
