package fineweight.toolpack;

import fineweight.sheet.function.Argument;
import fineweight.sheet.function.SheetFunction;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.formula.OperationEvaluationContext;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.functions.FreeRefFunction;

/** One function as the evaluator calls it. */
final class CellFunction implements FreeRefFunction {
  private final SheetFunction function;

  CellFunction(SheetFunction function) {
    this.function = function;
  }

  /** An error in a cell that is handed over is the answer, as with every function. */
  @Override
  public ValueEval evaluate(ValueEval[] given, OperationEvaluationContext context) {
    List<Argument> arguments = new ArrayList<>();
    for (ValueEval value : given) {
      ErrorEval error = CellArguments.error(value);
      if (error != null) {
        return error;
      }
      arguments.add(CellArguments.argument(value));
    }
    return CellOutcomes.value(function.evaluate(arguments));
  }
}
