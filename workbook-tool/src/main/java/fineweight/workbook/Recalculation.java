package fineweight.workbook;

import java.util.function.Consumer;

/**
 * Which formulas of the owner an edit calculates by itself: all that call certain functions. Their
 * stored results are brought up to date.
 *
 * @param left takes the cells that cannot be calculated and are left as they are, perhaps more than
 *     once
 */
public record Recalculation(FormulaCalculator calculator, Consumer<CellPlace> left) {
  public static final Recalculation NONE = new Recalculation(FormulaCalculator.NONE, cell -> {});
}
