package fineweight.sale;

import fineweight.money.Amounts;
import fineweight.money.Gain;
import fineweight.money.WantedGain;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.LongPredicate;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Finds the lowest price, to the cent, at which a sale earns what is wanted.
 *
 * <p>Before rounding, what is earned beyond the wanted is a straight line within each stretch of
 * prices that lies in one tier and on one side of the cap. Two fees are rounded, each by half a
 * cent at the most, so the truth lies within one cent of that line: on a rising stretch the first
 * price at which the line comes within a cent of zero is found by halving, and only the few prices
 * from there on are tried one by one.
 */
final class PriceSearch {
  /** Ten thousand million of the currency, in cents: far above any coin. */
  private static final long HIGHEST = 1_000_000_000_000L;

  /** A stretch so flat that a million cents do not settle it earns nothing worth naming. */
  private static final long MOST_TRIES = 1_000_000L;

  private final FeeSchedule schedule;
  private final Money cost;
  private final WantedGain wanted;
  private final CurrencyUnit currency;
  private final BigDecimal cent;

  private record Stretch(long first, long last) {}

  PriceSearch(FeeSchedule schedule, Money cost, WantedGain wanted) {
    this.schedule = schedule;
    this.cost = cost;
    this.wanted = wanted;
    this.currency = cost.getCurrencyUnit();
    this.cent = Money.ofMinor(currency, 1).getAmount();
  }

  Optional<LeastPrice> lowest() {
    List<Stretch> stretches = stretches();
    for (int i = 0; i < stretches.size(); i++) {
      OptionalLong found = lowestIn(stretches.get(i));
      if (found.isPresent()) {
        Money price = money(found.getAsLong());
        Proceeds proceeds = schedule.at(price);
        String caution = caution(stretches.subList(i + 1, stretches.size()));
        return Optional.of(
            new LeastPrice(
                proceeds,
                Gain.of(proceeds.net(), cost),
                "from " + Amounts.words(price) + " on it earns " + wanted.words() + caution));
      }
    }
    return Optional.empty();
  }

  private OptionalLong lowestIn(Stretch stretch) {
    boolean rising = beyondWanted(stretch.last()).compareTo(beyondWanted(stretch.first())) > 0;
    long start = rising ? first(stretch, this::comesWithinACent) : stretch.first();
    for (long price = start; price <= stretch.last() && price - start < MOST_TRIES; price++) {
      if (earns(price)) {
        return OptionalLong.of(price);
      }
      if (!comesWithinACent(price)) {
        break;
      }
    }
    return OptionalLong.empty();
  }

  private boolean earns(long price) {
    Money money = money(price);
    return wanted.isEarned(money, schedule.net(money), cost);
  }

  private boolean comesWithinACent(long price) {
    return beyondWanted(price).compareTo(cent.negate()) >= 0;
  }

  private BigDecimal beyondWanted(long price) {
    Money money = money(price);
    return schedule
        .exactNet(money.getAmount())
        .subtract(cost.getAmount())
        .subtract(wanted.needed(money, cost));
  }

  /** The stretches on which the line is straight, ascending and without gaps. */
  private List<Stretch> stretches() {
    List<Stretch> stretches = new ArrayList<>();
    long first = 0;
    for (Commission.Tier tier : schedule.commission().tiers()) {
      long last = tier.upTo().map(this::lastPriceOf).orElse(HIGHEST);
      if (last >= first) {
        stretches.addAll(splitAtCap(new Stretch(first, last)));
        first = last + 1;
      }
    }
    return stretches;
  }

  private long lastPriceOf(Money upTo) {
    Money postage = schedule.handling().charged();
    return (schedule.commission().onPostage() ? upTo.minus(postage) : upTo).getAmountMinorLong();
  }

  private List<Stretch> splitAtCap(Stretch stretch) {
    Optional<Money> cap = schedule.commission().cap();
    if (cap.isEmpty()) {
      return List.of(stretch);
    }
    BigDecimal limit = cap.get().getAmount();
    long capped = first(stretch, price -> uncapped(price).compareTo(limit) >= 0);
    return capped <= stretch.first() || capped > stretch.last()
        ? List.of(stretch)
        : List.of(new Stretch(stretch.first(), capped - 1), new Stretch(capped, stretch.last()));
  }

  private BigDecimal uncapped(long price) {
    Money base =
        schedule.commission().onPostage()
            ? money(price).plus(schedule.handling().charged())
            : money(price);
    return schedule.commission().uncapped(base.getAmount());
  }

  /**
   * The first price of a stretch at which something holds that never ceases to; else one beyond.
   */
  private static long first(Stretch stretch, LongPredicate holds) {
    long low = stretch.first();
    long high = stretch.last() + 1;
    while (low < high) {
      long middle = low + (high - low) / 2;
      if (holds.test(middle)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /** Where a tier takes its percentage of the whole price, a higher price may bring less. */
  private String caution(List<Stretch> above) {
    for (Stretch stretch : above) {
      if (!earns(stretch.first())) {
        return "; not from "
            + Amounts.words(money(stretch.first()))
            + " on, where the fee rises, until "
            + again(stretch);
      }
    }
    return "";
  }

  private String again(Stretch stretch) {
    OptionalLong next = lowestIn(stretch);
    return next.isPresent() ? Amounts.words(money(next.getAsLong())) : "a still higher tier";
  }

  private Money money(long minor) {
    return Money.ofMinor(currency, minor);
  }
}
