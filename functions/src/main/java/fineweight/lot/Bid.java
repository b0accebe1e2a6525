package fineweight.lot;

import fineweight.money.Amounts;
import fineweight.money.WantedGain;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * The most that may be paid for a lot so that it still earns what is wanted, once premium, tax and
 * postage are paid too. Immutable.
 *
 * @param low the highest price with the lowest worth of every open piece; empty where even a gift
 *     would not earn it
 * @param high the same with the highest worth
 * @param sentence the answer in words
 */
public record Bid(Optional<LotCost> low, Optional<LotCost> high, String sentence) {
  public Bid {
    Objects.requireNonNull(low, "low");
    Objects.requireNonNull(high, "high");
    Objects.requireNonNull(sentence, "sentence");
  }

  /**
   * Finds the highest price for the least and for the most worth.
   *
   * @param terms what is paid beside the price
   * @param wanted what the lot must earn; a margin is taken of its worth, a markup of its cost
   * @param leastWorth what the pieces bring at least, zero or more
   * @param mostWorth what they bring at most, not below the least
   * @throws IllegalArgumentException if the worths are negative or the wrong way round
   */
  public static Bid of(BuyingTerms terms, WantedGain wanted, Money leastWorth, Money mostWorth) {
    if (leastWorth.isNegative() || mostWorth.isLessThan(leastWorth)) {
      throw new IllegalArgumentException(
          "the worths must be zero or more, the least first: " + leastWorth + ", " + mostWorth);
    }
    Optional<LotCost> low = highestPrice(terms, wanted, leastWorth);
    Optional<LotCost> high = highestPrice(terms, wanted, mostWorth);
    return new Bid(low, high, sentence(low, high, wanted));
  }

  /**
   * The cost never falls as the price rises, so the last price that still earns is found by
   * halving.
   */
  private static Optional<LotCost> highestPrice(BuyingTerms terms, WantedGain wanted, Money worth) {
    CurrencyUnit currency = worth.getCurrencyUnit();
    if (!earns(terms, wanted, worth, Money.zero(currency))) {
      return Optional.empty();
    }
    long earning = 0;
    long tooMuch = worth.getAmountMinorLong() + 1;
    while (tooMuch - earning > 1) {
      long middle = earning + (tooMuch - earning) / 2;
      if (earns(terms, wanted, worth, Money.ofMinor(currency, middle))) {
        earning = middle;
      } else {
        tooMuch = middle;
      }
    }
    return Optional.of(terms.at(Money.ofMinor(currency, earning)));
  }

  private static boolean earns(BuyingTerms terms, WantedGain wanted, Money worth, Money price) {
    return wanted.isEarned(worth, worth, terms.at(price).total());
  }

  /** A lot has no price to sell at; its worth stands for it. */
  private static String words(WantedGain wanted) {
    return wanted instanceof WantedGain.Margin margin
        ? "a margin of " + margin.percent().toPlainString() + " % of the worth"
        : wanted.words();
  }

  private static String sentence(Optional<LotCost> low, Optional<LotCost> high, WantedGain wanted) {
    if (high.isEmpty()) {
      return "no price leaves " + words(wanted);
    }
    String most = Amounts.words(high.get().price());
    if (low.isEmpty()) {
      return "as little as nothing, at most "
          + most
          + " if every open piece is the better one, leaves "
          + words(wanted);
    }
    String least = Amounts.words(low.get().price());
    String figure =
        least.equals(most)
            ? "at most " + least
            : "at most " + least + ", or " + most + " if every open piece is the better one";
    return figure
        + "; with premium, tax and postage that is "
        + Amounts.words(low.get().total())
        + " and leaves "
        + words(wanted);
  }
}
