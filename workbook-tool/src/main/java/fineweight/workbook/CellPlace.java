package fineweight.workbook;

/**
 * The place of a cell. Immutable.
 *
 * @param sheet the sheet's name; empty in a file that has only one table (CSV)
 * @param row from 0
 * @param column from 0
 */
public record CellPlace(String sheet, int row, int column) {
  /** The letters of a column: 0 is A, 26 is AA. */
  public static String letters(int column) {
    StringBuilder letters = new StringBuilder();
    for (int rest = column; rest >= 0; rest = rest / 26 - 1) {
      letters.insert(0, (char) ('A' + rest % 26));
    }
    return letters.toString();
  }

  /** As people write it, such as {@code Inventory!C7}. */
  @Override
  public String toString() {
    String cell = letters(column) + (row + 1);
    return sheet.isEmpty() ? cell : sheet + "!" + cell;
  }
}
