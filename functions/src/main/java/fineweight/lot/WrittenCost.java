package fineweight.lot;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.Money;

/**
 * The cost of a lot as people write it beside its rows: once in the first row, in every row what
 * that row cost, the lot's price repeated in every row, or on a sheet of its own. Equal figures
 * repeated can mean two things and are asked about, never guessed.
 */
public sealed interface WrittenCost {
  /** Where a known cost was found. */
  enum Place {
    OWN_SHEET,
    FIRST_ROW,
    EACH_ROW
  }

  /** The sentence or the question for a person. */
  String sentence();

  /**
   * The cost is known.
   *
   * @param cost of the whole lot
   * @param place where it was found
   * @param sentence how the figures were read
   */
  record Known(Money cost, Place place, String sentence) implements WrittenCost {
    public Known {
      Objects.requireNonNull(cost, "cost");
      Objects.requireNonNull(place, "place");
    }
  }

  /**
   * The figures allow two readings.
   *
   * @param sentence the question that settles it
   * @param least the lower reading, to be used until it is answered
   * @param most the higher one
   */
  record Asks(String sentence, Money least, Money most) implements WrittenCost {
    public Asks {
      if (most.isLessThan(least)) {
        throw new IllegalArgumentException("the higher reading is below the lower one");
      }
    }
  }

  /**
   * No figure was written.
   *
   * @param sentence says so
   */
  record Missing(String sentence) implements WrittenCost {}

  /**
   * Reads the figures beside the rows of one lot.
   *
   * @param rows what stands in the cost cell of each row, in the order of the sheet; at least one
   *     row
   * @param ownSheet the cost on a sheet of lots, where there is one
   * @throws IllegalArgumentException if there is no row or a figure is negative
   */
  static WrittenCost of(List<Optional<Money>> rows, Optional<Money> ownSheet) {
    if (rows.isEmpty()) {
      throw new IllegalArgumentException("a lot has at least one row");
    }
    List<Money> figures = rows.stream().flatMap(Optional::stream).toList();
    if (figures.stream().anyMatch(Money::isNegative)
        || ownSheet.filter(Money::isNegative).isPresent()) {
      throw new IllegalArgumentException("a cost is zero or more");
    }
    if (ownSheet.isPresent()) {
      return CostReading.withOwnSheet(ownSheet.get(), figures);
    }
    if (figures.isEmpty()) {
      return new Missing("no cost is written for this lot");
    }
    return CostReading.ofRows(rows, figures);
  }
}
