package fineweight.toolpack;

import fineweight.sheet.function.Outcome;
import java.util.List;
import org.apache.poi.ss.formula.CacheAreaEval;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.NumberEval;
import org.apache.poi.ss.formula.eval.StringEval;
import org.apache.poi.ss.formula.eval.ValueEval;

/** From an outcome to what the evaluator takes. */
final class CellOutcomes {
  private CellOutcomes() {}

  static ValueEval value(Outcome outcome) {
    if (outcome instanceof Outcome.Number number) {
      double value = number.value().doubleValue();
      return Double.isInfinite(value) ? ErrorEval.NUM_ERROR : new NumberEval(value);
    }
    if (outcome instanceof Outcome.Text text) {
      return new StringEval(text.value());
    }
    if (outcome instanceof Outcome.NotAvailable) {
      return ErrorEval.NA;
    }
    return outcome instanceof Outcome.Area area ? area(area) : StringEval.EMPTY_INSTANCE;
  }

  private static ValueEval area(Outcome.Area area) {
    List<List<Outcome>> rows = area.rows();
    int height = rows.size();
    int width = rows.get(0).size();
    ValueEval[] values = new ValueEval[height * width];
    for (int row = 0; row < height; row++) {
      for (int column = 0; column < width; column++) {
        values[row * width + column] = value(rows.get(row).get(column));
      }
    }
    return new CacheAreaEval(0, 0, height - 1, width - 1, values);
  }
}
