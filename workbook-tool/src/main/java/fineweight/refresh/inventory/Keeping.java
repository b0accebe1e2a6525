package fineweight.refresh.inventory;

import fineweight.column.FoundTable;
import fineweight.column.InputColumn;
import fineweight.column.RowText;

/**
 * Where a piece is kept and pictured, in its owner's words. Immutable.
 *
 * @param place such as an album's page; empty if none is written
 * @param picture such as a file's name; empty if none is written
 */
public record Keeping(String place, String picture) {
  public static final Keeping UNSAID = new Keeping("", "");

  static Keeping of(RowText row, FoundTable table) {
    return new Keeping(text(row, table, InputColumn.PLACE), text(row, table, InputColumn.PICTURE));
  }

  private static String text(RowText row, FoundTable table, InputColumn column) {
    return table.first(column).map(row::at).orElse("").strip();
  }
}
