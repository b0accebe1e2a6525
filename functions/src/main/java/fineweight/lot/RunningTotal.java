package fineweight.lot;

import fineweight.money.Gain;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import org.joda.money.Money;

/**
 * The worth of a lot's rows added up in the order they were opened, against its cost. Immutable.
 *
 * @param cost what the whole lot cost
 * @param steps one for each row opened, in that order
 * @param paidAt the number of the row, from 1, at which the lot had paid for itself; 0 where it
 *     cost nothing; empty where it has not
 */
public record RunningTotal(Money cost, List<Step> steps, OptionalInt paidAt) {
  /**
   * One row opened.
   *
   * @param number from 1
   * @param worth of this row
   * @param total of all rows so far
   * @param standing the total less the whole lot's cost
   */
  public record Step(int number, Money worth, Money total, Money standing) {}

  public RunningTotal {
    Objects.requireNonNull(cost, "cost");
    steps = List.copyOf(steps);
    Objects.requireNonNull(paidAt, "paidAt");
  }

  /**
   * Adds up rows in the order they were opened.
   *
   * @param cost zero or more
   * @param worths the worth of each row in the order opened, as the cells show it, zero or more
   * @throws IllegalArgumentException if an amount is negative
   */
  public static RunningTotal of(Money cost, List<Money> worths) {
    if (cost.isNegative()) {
      throw new IllegalArgumentException("the cost of a lot is zero or more, not " + cost);
    }
    Money total = Money.zero(cost.getCurrencyUnit());
    OptionalInt paidAt = cost.isZero() ? OptionalInt.of(0) : OptionalInt.empty();
    List<Step> steps = new ArrayList<>();
    for (Money worth : worths) {
      if (worth.isNegative()) {
        throw new IllegalArgumentException("a worth is zero or more, not " + worth);
      }
      total = total.plus(worth);
      Step step = new Step(steps.size() + 1, worth, total, total.minus(cost));
      steps.add(step);
      if (paidAt.isEmpty() && step.standing().isPositiveOrZero()) {
        paidAt = OptionalInt.of(step.number());
      }
    }
    return new RunningTotal(cost, steps, paidAt);
  }

  /** The worth of all rows opened so far. */
  public Money total() {
    return steps.isEmpty()
        ? Money.zero(cost.getCurrencyUnit())
        : steps.get(steps.size() - 1).total();
  }

  /** Where the lot stands against its cost. */
  public Gain gain() {
    return Gain.of(total(), cost);
  }
}
