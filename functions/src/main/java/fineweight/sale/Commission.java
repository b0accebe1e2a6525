package fineweight.sale;

import fineweight.money.Amounts;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * A seller's commission: per cent of the price, in tiers where a schedule has them, with a cap
 * where it has one. Rounded half up to the cent once. Immutable.
 *
 * @param tiers ascending; only the last has no end
 * @param rule whether a tier's percentage counts for its part of the price or for all of it
 * @param cap the most that is taken, if there is a cap
 * @param onPostage whether the postage that the buyer pays is commissioned too
 */
public record Commission(List<Tier> tiers, Rule rule, Optional<Money> cap, boolean onPostage) {
  private static final Pattern TIER =
      Pattern.compile("(\\d+(?:\\.\\d+)?) ?%?(?: up to (\\d+(?:\\.\\d+)?))?");

  /** What a tier's percentage is taken of. */
  public enum Rule {
    /** Each tier takes its percentage of the part of the price that lies in it. */
    EACH_PART,
    /** The tier that the price falls into takes its percentage of the whole price. */
    WHOLE_PRICE
  }

  /**
   * One tier.
   *
   * @param upTo the highest amount that still belongs to it; empty for the last tier
   * @param percent 0 to 100
   */
  public record Tier(Optional<Money> upTo, BigDecimal percent) {
    public Tier {
      Objects.requireNonNull(upTo, "upTo");
      percent = Amounts.requirePercent(percent, "a commission");
    }
  }

  /**
   * @throws IllegalArgumentException if there is no tier, the tiers do not ascend, or the last one
   *     ends
   */
  public Commission {
    tiers = List.copyOf(tiers);
    Objects.requireNonNull(rule, "rule");
    if (tiers.isEmpty() || tiers.get(tiers.size() - 1).upTo().isPresent()) {
      throw new IllegalArgumentException("the last tier of a commission has no end");
    }
    Optional<Money> below = Optional.empty();
    for (Tier tier : tiers.subList(0, tiers.size() - 1)) {
      Money end =
          tier.upTo()
              .orElseThrow(
                  () -> new IllegalArgumentException("only the last tier may have no end"));
      if (!end.isPositive() || below.filter(previous -> !end.isGreaterThan(previous)).isPresent()) {
        throw new IllegalArgumentException("the tiers of a commission must ascend: " + end);
      }
      below = Optional.of(end);
    }
    if (cap.filter(Money::isNegative).isPresent()) {
      throw new IllegalArgumentException("a cap is zero or more, not " + cap.get());
    }
  }

  /** The same percentage of every price, without a cap. */
  public static Commission flat(BigDecimal percent) {
    return new Commission(
        List.of(new Tier(Optional.empty(), percent)), Rule.EACH_PART, Optional.empty(), false);
  }

  /**
   * Reads tiers as a person writes them into one cell: {@code 12.5 up to 1000; 9}.
   *
   * @throws IllegalArgumentException if the text is not of this form
   */
  public static List<Tier> parseTiers(String text, CurrencyUnit currency) {
    List<Tier> tiers = new ArrayList<>();
    for (String piece : text.split(";", -1)) {
      Matcher match = TIER.matcher(piece.strip());
      if (!match.matches()) {
        throw new IllegalArgumentException(
            "\"" + piece.strip() + "\" is no tier; expected such as 12.5 up to 1000");
      }
      Optional<Money> upTo =
          Optional.ofNullable(match.group(2))
              .map(amount -> Amounts.atCell(BigMoney.of(currency, new BigDecimal(amount))));
      tiers.add(new Tier(upTo, new BigDecimal(match.group(1))));
    }
    return tiers;
  }

  public Commission withCap(Money newCap) {
    return new Commission(tiers, rule, Optional.of(newCap), onPostage);
  }

  /**
   * The commission as it is charged.
   *
   * @param base price, and postage where it counts
   */
  public Money of(Money base) {
    return Amounts.atCell(BigMoney.of(base.getCurrencyUnit(), exact(base.getAmount())));
  }

  /** The commission before it is rounded. */
  BigDecimal exact(BigDecimal base) {
    BigDecimal uncapped = uncapped(base);
    return cap.isPresent() ? uncapped.min(cap.get().getAmount()) : uncapped;
  }

  BigDecimal uncapped(BigDecimal base) {
    BigDecimal sum = BigDecimal.ZERO;
    BigDecimal from = BigDecimal.ZERO;
    for (Tier tier : tiers) {
      boolean here = tier.upTo().isEmpty() || base.compareTo(tier.upTo().get().getAmount()) <= 0;
      BigDecimal share = tier.percent().movePointLeft(2);
      if (here) {
        return rule == Rule.WHOLE_PRICE
            ? base.multiply(share)
            : sum.add(base.subtract(from).multiply(share));
      }
      BigDecimal end = tier.upTo().get().getAmount();
      sum = sum.add(end.subtract(from).multiply(share));
      from = end;
    }
    throw new IllegalStateException("the last tier has no end");
  }
}
