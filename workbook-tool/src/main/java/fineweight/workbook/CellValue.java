package fineweight.workbook;

import java.math.BigDecimal;
import java.time.LocalDateTime;

/** What a cell holds, as its file says it. Numbers stay decimal. */
public sealed interface CellValue {
  Blank BLANK = new Blank();

  /** No content; an empty text counts as blank too. */
  record Blank() implements CellValue {}

  /**
   * @param value never empty
   */
  record Text(String value) implements CellValue {}

  record Number(BigDecimal value) implements CellValue {}

  /**
   * A number that is formatted as a date, or an ISO date cell.
   *
   * @param value the date that the file's own calendar (1900 or 1904) gives
   * @param yearOnly whether the cell's format shows nothing but the year
   */
  record Date(LocalDateTime value, boolean yearOnly) implements CellValue {}

  record Bool(boolean value) implements CellValue {}

  /**
   * @param code such as {@code #VALUE!}
   */
  record Error(String code) implements CellValue {}
}
