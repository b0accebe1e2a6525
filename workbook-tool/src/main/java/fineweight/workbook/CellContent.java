package fineweight.workbook;

import java.math.BigDecimal;

/** What we put into a cell. */
public sealed interface CellContent {
  Empty EMPTY = new Empty();

  /** The cell keeps its format and holds nothing. */
  record Empty() implements CellContent {}

  /** Text, always stored as text: it never becomes a formula, whatever it begins with. */
  record Text(String value) implements CellContent {}

  record Number(BigDecimal value) implements CellContent {}

  /**
   * A live formula with the result that the library computed.
   *
   * @param formula without the equals sign, in the file format's own English form
   * @param result the stored result: a number, or null for none
   * @param text the stored result as a text when it is not a number; null otherwise
   */
  record Formula(String formula, BigDecimal result, String text) implements CellContent {
    public static Formula number(String formula, BigDecimal result) {
      return new Formula(formula, result, null);
    }

    public static Formula text(String formula, String text) {
      return new Formula(formula, null, text);
    }
  }
}
