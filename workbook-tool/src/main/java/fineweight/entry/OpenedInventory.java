package fineweight.entry;

import fineweight.column.Appraiser;
import fineweight.column.FoundTable;
import fineweight.refresh.inventory.Answers;
import fineweight.refresh.inventory.Inventory;
import fineweight.refresh.inventory.InventoryFinder;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.PieceNumbers;
import fineweight.refresh.inventory.Progress;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.refresh.inventory.RowReader;
import fineweight.workbook.Cell;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The inventory of a workbook, as far as new rows of it need it. Immutable.
 *
 * @param inventory where it is
 * @param rows its rows
 * @param numbers the numbers of its pieces
 * @param lastRow its last row with a coin, from 0; that of the headings if it has none
 * @param lastCells what stands in that row, by column; empty if the list has no row
 */
public record OpenedInventory(
    Inventory inventory,
    List<ReadRow> rows,
    PieceNumbers numbers,
    int lastRow,
    Map<Integer, Cell> lastCells) {
  public OpenedInventory {
    rows = List.copyOf(rows);
    lastCells = Map.copyOf(lastCells);
  }

  /**
   * @param sheet the sheet that holds it, if it was named
   * @throws RefreshRefusal if there is none, or more than one
   */
  public static OpenedInventory read(Workbook workbook, Optional<String> sheet, Appraiser appraiser)
      throws WorkbookRefusal, RefreshRefusal {
    OurMarks marks = OurMarks.read(workbook.names());
    Inventory inventory = new InventoryFinder(workbook, marks).find(sheet);
    RowReader reader = new RowReader(workbook, inventory, appraiser, Answers.read(workbook, marks));
    reader.read(Progress.UNSEEN);
    int headings = inventory.table().headerRow();
    int lastRow =
        reader.rows().stream()
            .filter(ReadRow::isCoin)
            .mapToInt(ReadRow::row)
            .max()
            .orElse(headings);
    Map<Integer, Cell> lastCells = new HashMap<>();
    if (lastRow > headings) {
      workbook.read(
          inventory.sheet(),
          column -> true,
          lastRow,
          cells ->
              cells.stream()
                  .filter(cell -> cell.place().row() == lastRow)
                  .forEach(cell -> lastCells.put(cell.place().column(), cell)));
    }
    return new OpenedInventory(
        inventory, reader.rows(), PieceNumbers.of(reader), lastRow, lastCells);
  }

  /** The rows with the pieces that are still in the collection. */
  public List<ReadRow> held() {
    return rows.stream().filter(ReadRow::isCoin).flatMap(row -> row.held().stream()).toList();
  }

  FoundTable table() {
    return inventory.table();
  }

  boolean isEmpty() {
    return lastRow == table().headerRow();
  }

  /** The owner's columns, from the left. */
  TreeSet<Integer> columns() {
    TreeSet<Integer> columns = new TreeSet<>(table().headings().keySet());
    columns.addAll(table().columns().keySet());
    columns.removeAll(inventory.ours().values());
    return columns;
  }

  /** Whether the column is filled by a formula of the owner's and not by hand. */
  boolean isCalculated(int column) {
    return Optional.ofNullable(lastCells.get(column)).flatMap(Cell::formula).isPresent();
  }
}
