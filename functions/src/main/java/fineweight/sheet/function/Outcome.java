package fineweight.sheet.function;

import fineweight.quantity.Decimals;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

/** What a function hands back to its cell. Immutable. */
public sealed interface Outcome {
  /** An empty cell: nothing was asked. */
  Outcome BLANK = new Blank();

  /** No figure is known; a cell shows it as #N/A, so that no sum takes it for zero. */
  Outcome NOT_AVAILABLE = new NotAvailable();

  static Outcome number(BigDecimal value) {
    return new Number(value);
  }

  static Outcome text(String value) {
    return value.isEmpty() ? BLANK : new Text(value);
  }

  /** One outcome below the other. */
  static Outcome column(List<Outcome> cells) {
    return new Area(cells.stream().map(List::of).toList());
  }

  /** An exact decimal. */
  record Number(BigDecimal value) implements Outcome {
    public Number {
      value = Decimals.normal(value);
    }
  }

  /** Words. */
  record Text(String value) implements Outcome {
    public Text {
      Objects.requireNonNull(value, "value");
    }
  }

  /** See {@link Outcome#BLANK}. */
  record Blank() implements Outcome {}

  /** See {@link Outcome#NOT_AVAILABLE}. */
  record NotAvailable() implements Outcome {}

  /**
   * A rectangle of cells, for a matrix formula.
   *
   * @param rows at least one cell, all rows of the same length
   */
  record Area(List<List<Outcome>> rows) implements Outcome {
    public Area {
      rows = rows.stream().map(List::copyOf).toList();
    }
  }
}
