package fineweight.column;

import fineweight.clue.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the rows under an inventory's headings are. */
public final class Rows {
  private Rows() {}

  /** Whether the row is about a coin: not blank, no total, no repeated headings. */
  public static boolean isCoin(RowText row, FoundTable table) {
    return RowKind.isCoin(row, table);
  }

  /** Whether the row is a heading within the list: one filled cell that names no coin. */
  public static boolean isHeading(RowText row, FoundTable table, Appraisal appraisal) {
    return appraisal.state() == RowState.NOT_KNOWN && RowKind.isSingleCell(row, table);
  }

  /** The collector's own number of the piece. */
  public static Optional<String> key(RowText row, FoundTable table) {
    return RowKind.key(row, table);
  }

  /** The row's cells as fields for the reader of clues. */
  public static List<Field> fields(RowText row, FoundTable table) {
    List<Field> fields = new ArrayList<>();
    for (Map.Entry<Integer, InputColumn> entry : table.columns().entrySet()) {
      String text = row.at(entry.getKey());
      if (!text.isBlank()) {
        entry.getValue().role().ifPresent(role -> fields.add(new Field(role, text)));
      }
    }
    return fields;
  }
}
