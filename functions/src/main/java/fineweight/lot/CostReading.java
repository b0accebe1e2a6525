package fineweight.lot;

import fineweight.money.Amounts;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** Tells apart the readings that the figures beside a lot's rows allow. */
final class CostReading {
  private CostReading() {}

  static WrittenCost withOwnSheet(Money own, List<Money> figures) {
    boolean repeated = figures.stream().allMatch(own::isEqual);
    if (repeated || Money.total(figures).isEqual(own)) {
      return new WrittenCost.Known(
          own, WrittenCost.Place.OWN_SHEET, "the cost on the sheet of lots");
    }
    Money sum = Money.total(figures);
    Money least = own.isLessThan(sum) ? own : sum;
    return new WrittenCost.Asks(
        "the sheet of lots says "
            + Amounts.words(own)
            + ", the rows of the lot add up to "
            + Amounts.words(sum)
            + ": which is the cost?",
        least,
        least.isEqual(own) ? sum : own);
  }

  static WrittenCost ofRows(List<Optional<Money>> rows, List<Money> figures) {
    Money first = figures.get(0);
    Money sum = Money.total(figures);
    if (figures.size() == 1) {
      return single(rows, first);
    }
    if (figures.stream().allMatch(first::isEqual)) {
      return first.isZero() ? eachRow(rows, sum) : repeated(figures, first, sum);
    }
    if (sum.minus(first).isEqual(first)) {
      return new WrittenCost.Asks(
          "the first figure, "
              + Amounts.words(first)
              + ", is the sum of the others: is it the price of the whole lot?",
          first,
          sum);
    }
    return eachRow(rows, sum);
  }

  private static WrittenCost single(List<Optional<Money>> rows, Money only) {
    if (rows.get(0).isPresent()) {
      return new WrittenCost.Known(
          only, WrittenCost.Place.FIRST_ROW, "the cost stands in the first row of the lot");
    }
    return new WrittenCost.Asks(
        "only one row, not the first, has a cost, "
            + Amounts.words(only)
            + ": is it the price of the whole lot?",
        only,
        only);
  }

  private static WrittenCost repeated(List<Money> figures, Money each, Money sum) {
    return new WrittenCost.Asks(
        Amounts.words(each)
            + " stands in "
            + figures.size()
            + " rows of the lot: is it the price of the whole lot, or of each row ("
            + Amounts.words(sum)
            + " in all)?",
        each,
        sum);
  }

  private static WrittenCost eachRow(List<Optional<Money>> rows, Money sum) {
    long blank = rows.stream().filter(Optional::isEmpty).count();
    String missing = blank == 0 ? "" : "; " + blank + " without a figure";
    return new WrittenCost.Known(
        sum, WrittenCost.Place.EACH_ROW, "the costs of the rows added up" + missing);
  }
}
