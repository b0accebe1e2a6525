package fineweight.refresh.inventory;

import fineweight.column.RowText;
import fineweight.workbook.Cell;
import fineweight.workbook.CellValue;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Cells as the text that the reader of clues takes. */
public final class CellTexts {
  /** The day that has the serial number 0 in the calendar of 1900, from March 1900 on. */
  private static final LocalDate SERIAL_ZERO = LocalDate.of(1899, 12, 30);

  private CellTexts() {}

  public static RowText row(List<Cell> cells) {
    Map<Integer, String> texts = new HashMap<>();
    for (Cell cell : cells) {
      String text = text(cell.value());
      if (!text.isBlank()) {
        texts.put(cell.place().column(), text);
      }
    }
    return new RowText(cells.get(0).place().row(), texts);
  }

  /**
   * A date cell of 1 January, or one that shows only the year, is a year: that is how people make a
   * cell of a year.
   */
  public static String text(CellValue value) {
    if (value instanceof CellValue.Text text) {
      return text.value();
    }
    if (value instanceof CellValue.Number number) {
      return number.value().signum() == 0
          ? "0"
          : number.value().stripTrailingZeros().toPlainString();
    }
    if (value instanceof CellValue.Date date) {
      return date(date);
    }
    if (value instanceof CellValue.Bool bool) {
      return bool.value() ? "yes" : "no";
    }
    return value instanceof CellValue.Error error ? error.code() : "";
  }

  /**
   * A number such as 1889 typed into a cell that is formatted as a date shows itself as a day of
   * 1905; no coin was bought then, and the number is a year.
   */
  private static String date(CellValue.Date date) {
    LocalDate day = date.value().toLocalDate();
    boolean newYear = day.getDayOfYear() == 1;
    long serial = ChronoUnit.DAYS.between(SERIAL_ZERO, day);
    if (!newYear && serial >= 1000 && serial <= 2200) {
      return Long.toString(serial);
    }
    return newYear || date.yearOnly() ? Integer.toString(day.getYear()) : day.toString();
  }
}
