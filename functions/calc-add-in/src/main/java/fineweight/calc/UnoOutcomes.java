package fineweight.calc;

import com.sun.star.uno.Any;
import fineweight.sheet.function.Outcome;
import java.util.List;

/** From an outcome to what the office takes. */
final class UnoOutcomes {
  private UnoOutcomes() {}

  static Object value(Outcome outcome) {
    if (outcome instanceof Outcome.Area area) {
      return area.rows().stream().map(UnoOutcomes::row).toArray(Object[][]::new);
    }
    return outcome instanceof Outcome.NotAvailable ? Any.VOID : cell(outcome);
  }

  private static Object[] row(List<Outcome> cells) {
    return cells.stream().map(UnoOutcomes::cell).toArray();
  }

  private static Object cell(Outcome outcome) {
    if (outcome instanceof Outcome.Number number) {
      return number.value().doubleValue();
    }
    if (outcome instanceof Outcome.NotAvailable) {
      return NOT_AVAILABLE;
    }
    return outcome instanceof Outcome.Text text ? text.value() : "";
  }

  /** Within an area the office knows an error by the lower half of a number that is none. */
  private static final Double NOT_AVAILABLE = Double.longBitsToDouble(0x7ff8000000007fffL);
}
