package fineweight.toolpack;

import fineweight.sheet.SheetFunctions;
import fineweight.sheet.function.SheetFunction;
import fineweight.workbook.Calculation;
import fineweight.workbook.CellPlace;
import fineweight.workbook.CellValue;
import fineweight.workbook.FormulaCalculator;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.poi.ss.formula.functions.FreeRefFunction;
import org.apache.poi.ss.formula.udf.UDFFinder;
import org.apache.poi.ss.usermodel.Workbook;

/**
 * All functions of the list, for a workbook. Give it to a workbook before formulas with these names
 * are set, because a .xls stores the name as that of an add-in only then; and again after every
 * opening, because a workbook remembers names and no code.
 */
public final class SheetFunctionPack implements UDFFinder, FormulaCalculator {
  private final Map<String, FreeRefFunction> functions =
      new TreeMap<>(String.CASE_INSENSITIVE_ORDER);

  private SheetFunctionPack() {
    for (SheetFunction function : SheetFunctions.all()) {
      functions.put(function.name(), new CellFunction(function));
    }
  }

  /** Makes the functions known to a workbook. */
  public static void giveTo(Workbook workbook) {
    workbook.addToolPack(new SheetFunctionPack());
  }

  /** The functions, for formulas of a workbook that is not held in memory. */
  public static FormulaCalculator calculator() {
    return new SheetFunctionPack();
  }

  @Override
  public boolean concerns(String formula) {
    return FormulaWords.callOurs(formula);
  }

  @Override
  public boolean isSure(String formula) {
    return FormulaWords.areSure(formula);
  }

  @Override
  public Map<CellPlace, CellValue> results(Calculation calculation, Set<CellPlace> wanted) {
    return ScratchWorkbook.results(calculation, wanted, this);
  }

  /** The function of a name, in capitals or not; null if it is none of ours. */
  @Override
  public FreeRefFunction findFunction(String name) {
    return functions.get(name);
  }
}
