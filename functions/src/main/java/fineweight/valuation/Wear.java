package fineweight.valuation;

import fineweight.money.Amounts;
import fineweight.quantity.Decimals;
import fineweight.quantity.Mass;
import java.math.BigDecimal;
import java.util.Objects;

/** How much of its metal a piece has lost in use, as the collector chose to reckon it. */
public sealed interface Wear {
  /** As struck. */
  static Wear none() {
    return new None();
  }

  /** The trade's allowance for worn United States 90 % silver. */
  static Wear tradeAllowance() {
    return new TradeAllowance();
  }

  /**
   * The share of the metal that is left, more than 0 and at most 1 (0 only where all of it is said
   * to be worn off), to 34 significant digits.
   */
  BigDecimal remaining();

  /** The words for a sentence, such as {@code 2 % wear}. */
  String words();

  /** The share that is lost: one less {@link #remaining()}. */
  default BigDecimal lost() {
    return Decimals.normal(BigDecimal.ONE.subtract(remaining()));
  }

  /** The figures of a piece as struck. */
  record None() implements Wear {
    @Override
    public BigDecimal remaining() {
      return BigDecimal.ONE;
    }

    @Override
    public String words() {
      return "no wear";
    }
  }

  /**
   * A percentage of the mass.
   *
   * @param percent 0 to 100
   */
  record Percentage(BigDecimal percent) implements Wear {
    /**
     * @throws IllegalArgumentException if the percentage lies outside 0 to 100
     */
    public Percentage {
      percent = Amounts.requirePercent(percent, "the wear");
    }

    @Override
    public BigDecimal remaining() {
      return Decimals.normal(BigDecimal.ONE.subtract(percent.movePointLeft(2)));
    }

    @Override
    public String words() {
      return percent.toPlainString() + " % wear";
    }
  }

  /**
   * Worn United States 90 % dimes, quarters and halves are bought and sold as 0.715 fine troy
   * ounces for one dollar of face, where the coins as struck from 1873 on hold 0.7234 (common
   * practice). For other coins choose another allowance.
   */
  record TradeAllowance() implements Wear {
    private static final BigDecimal REMAINING =
        new BigDecimal("0.715").divide(new BigDecimal("0.7234"), Decimals.DIVISION);

    @Override
    public BigDecimal remaining() {
      return REMAINING;
    }

    @Override
    public String words() {
      return "the trade's allowance for worn coin, 0.715 for 0.7234 ounces";
    }
  }

  /**
   * The piece's own mass on the scale against its standard. A piece heavier than its standard
   * counts as unworn: more mass within the mint's tolerance is no proof of more fine metal.
   *
   * @param measured the mass of one piece, more than zero
   * @param standard the mass of one piece as struck, more than zero
   */
  record MeasuredMass(Mass measured, Mass standard) implements Wear {
    /**
     * @throws IllegalArgumentException if a mass is zero
     */
    public MeasuredMass {
      Objects.requireNonNull(measured, "measured");
      Objects.requireNonNull(standard, "standard");
      if (measured.isZero() || standard.isZero()) {
        throw new IllegalArgumentException("a mass to compare must be more than zero");
      }
    }

    @Override
    public BigDecimal remaining() {
      return measured.compareTo(standard) >= 0
          ? BigDecimal.ONE
          : Decimals.normal(measured.grams().divide(standard.grams(), Decimals.DIVISION));
    }

    @Override
    public String words() {
      return measured + " on the scale against " + standard + " as struck";
    }
  }
}
