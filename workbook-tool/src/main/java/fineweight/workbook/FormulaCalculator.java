package fineweight.workbook;

import java.util.Map;
import java.util.Set;

/** Calculates formulas that call functions which no office has by itself. */
public interface FormulaCalculator {
  /** For edits that calculate nothing. */
  FormulaCalculator NONE =
      new FormulaCalculator() {
        @Override
        public boolean concerns(String formula) {
          return false;
        }

        @Override
        public boolean isSure(String formula) {
          return false;
        }

        @Override
        public Map<CellPlace, CellValue> results(Calculation calculation, Set<CellPlace> wanted) {
          return Map.of();
        }
      };

  /**
   * Whether a formula calls one of the functions.
   *
   * @param formula without the equals sign
   */
  boolean concerns(String formula);

  /** Whether everything beside these functions in a formula is calculated as offices do it. */
  boolean isSure(String formula);

  /**
   * Results of formulas.
   *
   * @param wanted cells with a formula, or within the area of one
   * @return the result of each wanted cell; one that cannot be calculated is not among them
   */
  Map<CellPlace, CellValue> results(Calculation calculation, Set<CellPlace> wanted);
}
