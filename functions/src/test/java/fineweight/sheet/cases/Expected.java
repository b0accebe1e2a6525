package fineweight.sheet.cases;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;

/**
 * What a case expects, by the texts that cells show: a number, a text, a part of a text after a
 * tilde, {@code #N/A}, nothing for an empty cell, and the rows of a column parted by strokes.
 *
 * @param cells one, or the cells of a column
 * @param column whether it is a column
 */
public record Expected(List<String> cells, boolean column) {
  /** Cells keep numbers to about fifteen digits. */
  private static final MathContext CELL = new MathContext(12);

  static Expected read(String text) {
    return text.startsWith("{") && text.endsWith("}")
        ? new Expected(Arrays.asList(text.substring(1, text.length() - 1).split("\\|", -1)), true)
        : new Expected(List.of(text), false);
  }

  /** Whether a cell of the answer, from the top, is as expected; numbers to twelve digits. */
  public boolean fits(int row, String shown) {
    String wanted = cells.get(row);
    if (wanted.startsWith("~")) {
      return shown.contains(wanted.substring(1));
    }
    if (wanted.equals(shown)) {
      return true;
    }
    return isNumber(wanted)
        && isNumber(shown)
        && new BigDecimal(wanted).round(CELL).compareTo(new BigDecimal(shown).round(CELL)) == 0;
  }

  private static boolean isNumber(String text) {
    return text.matches("-?\\d+(\\.\\d+)?(E-?\\d+)?");
  }
}
