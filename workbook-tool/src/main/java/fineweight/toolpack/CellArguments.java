package fineweight.toolpack;

import fineweight.sheet.function.Argument;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.formula.TwoDEval;
import org.apache.poi.ss.formula.eval.BlankEval;
import org.apache.poi.ss.formula.eval.BoolEval;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.MissingArgEval;
import org.apache.poi.ss.formula.eval.NumericValueEval;
import org.apache.poi.ss.formula.eval.RefEval;
import org.apache.poi.ss.formula.eval.StringValueEval;
import org.apache.poi.ss.formula.eval.ValueEval;

/** From what the evaluator hands over to arguments. */
final class CellArguments {
  private CellArguments() {}

  /** The first error in what is handed over; null if there is none. */
  static ErrorEval error(ValueEval value) {
    if (value instanceof ErrorEval error) {
      return error;
    }
    if (value instanceof RefEval cell) {
      return error(inner(cell));
    }
    if (value instanceof TwoDEval area) {
      for (int row = 0; row < area.getHeight(); row++) {
        for (int column = 0; column < area.getWidth(); column++) {
          if (area.getValue(row, column) instanceof ErrorEval error) {
            return error;
          }
        }
      }
    }
    return null;
  }

  static Argument argument(ValueEval value) {
    if (value instanceof MissingArgEval) {
      return Argument.LEFT_OUT;
    }
    if (value instanceof RefEval cell) {
      return single(inner(cell));
    }
    return value instanceof TwoDEval area ? area(area) : single(value);
  }

  private static ValueEval inner(RefEval cell) {
    return cell.getInnerValueEval(cell.getFirstSheetIndex());
  }

  private static Argument area(TwoDEval area) {
    List<List<Argument>> rows = new ArrayList<>();
    for (int row = 0; row < area.getHeight(); row++) {
      List<Argument> cells = new ArrayList<>();
      for (int column = 0; column < area.getWidth(); column++) {
        ValueEval cell = area.getValue(row, column);
        cells.add(cell instanceof BlankEval ? new Argument.Blank() : single(cell));
      }
      rows.add(cells);
    }
    return new Argument.Area(rows);
  }

  /** A single blank cell counts as zero, as in arithmetic. */
  private static Argument single(ValueEval value) {
    // A number or a truth is a text to the evaluator as well: these come first.
    if (value instanceof BoolEval truth) {
      return new Argument.Number(truth.getBooleanValue() ? BigDecimal.ONE : BigDecimal.ZERO);
    }
    if (value instanceof NumericValueEval number) {
      // The shortest decimal that means this double: 0.1 is meant as 0.1.
      return new Argument.Number(BigDecimal.valueOf(number.getNumberValue()));
    }
    return value instanceof StringValueEval text
        ? new Argument.Text(text.getStringValue())
        : new Argument.Number(BigDecimal.ZERO);
  }
}
