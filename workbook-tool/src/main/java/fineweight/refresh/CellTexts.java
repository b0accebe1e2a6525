package fineweight.refresh;

import fineweight.column.RowText;
import fineweight.workbook.Cell;
import fineweight.workbook.CellValue;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Cells as the text that the reader of clues takes. */
final class CellTexts {
  private CellTexts() {}

  static RowText row(List<Cell> cells) {
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
  static String text(CellValue value) {
    if (value instanceof CellValue.Text text) {
      return text.value();
    }
    if (value instanceof CellValue.Number number) {
      return number.value().signum() == 0
          ? "0"
          : number.value().stripTrailingZeros().toPlainString();
    }
    if (value instanceof CellValue.Date date) {
      boolean year = date.yearOnly() || date.value().getDayOfYear() == 1;
      return year
          ? Integer.toString(date.value().getYear())
          : date.value().toLocalDate().toString();
    }
    if (value instanceof CellValue.Bool bool) {
      return bool.value() ? "yes" : "no";
    }
    return value instanceof CellValue.Error error ? error.code() : "";
  }
}
