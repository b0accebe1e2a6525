package fineweight.refresh.column;

import fineweight.refresh.inventory.Progress;
import fineweight.workbook.CellContent;
import fineweight.workbook.ColumnEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/** Columns that tell how far writing them has come. */
public final class WatchedColumns {
  private WatchedColumns() {}

  /** The same columns; the first of them tells which row is being written. */
  public static List<ColumnEdit> of(List<ColumnEdit> columns, int lastRow, Progress progress) {
    if (columns.isEmpty()) {
      return columns;
    }
    ColumnEdit first = columns.get(0);
    IntFunction<CellContent> cells = first.cells();
    List<ColumnEdit> watched = new ArrayList<>(columns);
    watched.set(
        0,
        new ColumnEdit(
            first.column(),
            first.header(),
            first.look(),
            first.width(),
            row -> {
              progress.at(Progress.Stage.WRITING, row, lastRow);
              return cells.apply(row);
            }));
    return watched;
  }
}
