package fineweight.toolpack;

import fineweight.sheet.SheetFunctions;
import fineweight.sheet.function.SheetFunction;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.formula.functions.FreeRefFunction;
import org.apache.poi.ss.formula.udf.UDFFinder;
import org.apache.poi.ss.usermodel.Workbook;

/**
 * All functions of the list, for a workbook. Give it to a workbook before formulas with these names
 * are set, because a .xls stores the name as that of an add-in only then; and again after every
 * opening, because a workbook remembers names and no code.
 */
public final class SheetFunctionPack implements UDFFinder {
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

  /** The function of a name, in capitals or not; null if it is none of ours. */
  @Override
  public FreeRefFunction findFunction(String name) {
    return functions.get(name);
  }
}
