package fineweight.workbook;

import java.io.Closeable;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntPredicate;

/**
 * A collector's file, opened for reading. What is read never changes; edits go through {@link
 * #preview} and {@link #save}.
 */
public interface Workbook extends Closeable {
  Path path();

  FileFormat format();

  /** In the order of their tabs. A CSV has one, named after nothing: the empty text. */
  List<SheetSummary> sheets();

  /** The defined names of the whole workbook, ours and the owner's. */
  List<NamedCell> names() throws WorkbookRefusal;

  /**
   * Reads a sheet row by row, from the top, rows without cells left out.
   *
   * @param columns which columns are wanted; cells of others are not built
   * @param lastRow reading stops after this row (from 0); {@link Integer#MAX_VALUE} for all
   * @param rows takes each row's wanted cells, ascending by column, blank ones left out
   */
  void read(String sheet, IntPredicate columns, int lastRow, Consumer<List<Cell>> rows)
      throws WorkbookRefusal;

  /**
   * The used area of a sheet: the largest row and column with content or format, from 0; -1 if
   * there is none.
   */
  UsedArea usedArea(String sheet) throws WorkbookRefusal;

  /** Tables, merged areas and the like that decide where columns may be put. */
  SheetLayout layout(String sheet) throws WorkbookRefusal;

  /** Why no edit of this file can be saved, in one sentence with the remedy; empty if one can. */
  default Optional<String> onlyReadBecause() {
    return Optional.empty();
  }

  /**
   * Every cell that the edit would change, stored results of the owner's formulas that depend on it
   * included.
   *
   * @throws WorkbookRefusal if the edit cannot be thought of, be the file only read or not
   */
  void preview(WorkbookEdit edit, Consumer<CellChange> changes) throws WorkbookRefusal;

  /**
   * Makes the edit in one step: complete new file beside the old, read back, backup kept, renamed
   * over. An edit that changes nothing writes nothing.
   *
   * @throws WorkbookRefusal if the edit cannot be made; the file is then as it was
   */
  SaveResult save(WorkbookEdit edit) throws WorkbookRefusal;

  /**
   * @param lastRow from 0, -1 for none
   * @param lastColumn from 0, -1 for none
   */
  record UsedArea(int lastRow, int lastColumn) {}

  /**
   * @param written false if nothing had to change
   * @param changedCells how many cells changed
   * @param backup where the former file is kept; null if nothing was written
   */
  record SaveResult(boolean written, long changedCells, Path backup) {}
}
