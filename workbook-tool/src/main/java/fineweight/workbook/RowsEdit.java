package fineweight.workbook;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Rows put directly under the last row of a list. They look like that row. A table object that ends
 * with it grows, and so do the areas of drop-downs and conditional formats that end with it.
 * Nothing below the list is moved or overwritten: whatever stands there makes the edit refused. A
 * formula of the owner's that is filled down further than his list is not in the way.
 *
 * @param sheet the sheet's name
 * @param lastRow the list's last row so far, from 0
 * @param firstColumn the list's first column, from 0
 * @param lastColumn the list's last column, counted in
 * @param rows the new rows from the top: contents by column
 * @param underHeadings whether the last row is that of the headings, because the list has no row
 *     yet: new rows do not look like it
 * @param corrections contents of rows that the list has already, by row and column; they replace
 *     what stands there
 */
public record RowsEdit(
    String sheet,
    int lastRow,
    int firstColumn,
    int lastColumn,
    List<Map<Integer, CellContent>> rows,
    SortedMap<Integer, Map<Integer, CellContent>> corrections,
    boolean underHeadings) {

  /** Rows under the last row of a list that has some. */
  public RowsEdit(
      String sheet,
      int lastRow,
      int firstColumn,
      int lastColumn,
      List<Map<Integer, CellContent>> rows,
      SortedMap<Integer, Map<Integer, CellContent>> corrections) {
    this(sheet, lastRow, firstColumn, lastColumn, rows, corrections, false);
  }

  /**
   * @throws IllegalArgumentException if a column lies outside of the list or a correction below it
   */
  public RowsEdit {
    rows = rows.stream().map(Map::copyOf).toList();
    corrections = new TreeMap<>(corrections);
    int first = firstColumn;
    int last = lastColumn;
    boolean outside =
        rows.stream()
            .flatMap(row -> row.keySet().stream())
            .anyMatch(column -> column < first || column > last);
    if (lastRow < 0 || first < 0 || outside) {
      throw new IllegalArgumentException("rows: a column lies outside of the list");
    }
    if (!corrections.isEmpty() && (corrections.firstKey() < 0 || corrections.lastKey() > lastRow)) {
      throw new IllegalArgumentException("corrections: a row lies outside of the list");
    }
  }

  /** The last row when the new ones are there. */
  public int newLastRow() {
    return lastRow + rows.size();
  }

  /** What the edit says of a cell; null if nothing. */
  public CellContent wanted(int row, int column) {
    if (row > lastRow) {
      return row <= newLastRow() ? rows.get(row - lastRow - 1).get(column) : null;
    }
    Map<Integer, CellContent> corrected = corrections.get(row);
    return corrected == null ? null : corrected.get(column);
  }

  /** The first row that the edit writes into. */
  public int firstWritten() {
    return corrections.isEmpty() ? lastRow + 1 : corrections.firstKey();
  }

  /** Why the rows cannot stand there, for the owner. */
  public WorkbookRefusal refusal(String obstacle) {
    return new WorkbookRefusal(
        WorkbookRefusal.Kind.NO_ROOM,
        "There is no room for %d new rows under row %d%s, because %s; make room there first, or put the rows on a sheet of their own."
            .formatted(
                rows.size(),
                lastRow + 1,
                sheet.isEmpty() ? "" : " of sheet \"" + sheet + "\"",
                obstacle));
  }
}
