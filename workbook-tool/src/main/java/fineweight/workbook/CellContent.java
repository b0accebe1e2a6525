package fineweight.workbook;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** What we put into a cell. */
public sealed interface CellContent {
  Empty EMPTY = new Empty();

  /** The cell keeps its format and holds nothing. */
  record Empty() implements CellContent {}

  /** Text, always stored as text: it never becomes a formula, whatever it begins with. */
  record Text(String value) implements CellContent {}

  record Number(BigDecimal value) implements CellContent {}

  /** A day, for a cell that has the look of one. Only rows put under a list hold such. */
  record Day(LocalDate value) implements CellContent {
    /**
     * The number that stands for the day in a workbook.
     *
     * @param counts1904 whether the workbook counts days from 1904; else from 1900, right from
     *     March 1900 on
     */
    public Number serial(boolean counts1904) {
      LocalDate zero = counts1904 ? LocalDate.of(1904, 1, 1) : LocalDate.of(1899, 12, 30);
      return new Number(BigDecimal.valueOf(ChronoUnit.DAYS.between(zero, value)));
    }
  }

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
