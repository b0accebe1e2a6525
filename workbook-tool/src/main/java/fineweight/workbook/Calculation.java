package fineweight.workbook;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * As much of a workbook as is needed to calculate some of its formulas.
 *
 * @param sheets the names of all sheets, in their order
 * @param counts1904 whether days are counted from 1904
 * @param values what cells hold that are not calculated
 * @param formulas what is calculated
 */
public record Calculation(
    List<String> sheets,
    boolean counts1904,
    List<Name> names,
    Map<CellPlace, CellValue> values,
    List<Formula> formulas) {

  /**
   * A defined name.
   *
   * @param sheet the sheet that knows it; empty for the whole workbook
   */
  public record Name(String name, String sheet, String refersTo) {}

  /**
   * @param text without the equals sign, as written for {@code writtenFor}
   * @param writtenFor the cell whose formula it shares, filled to this one; mostly the cell itself
   * @param area of an array formula; empty for none
   */
  public record Formula(
      CellPlace place, String text, CellPlace writtenFor, Optional<SheetLayout.Area> area) {}
}
