package fineweight.column;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * A row's cells as text. Immutable.
 *
 * @param row from 0
 * @param cells by column from 0, blank ones left out; numbers in plain decimal notation, dates as
 *     year or ISO date
 */
public record RowText(int row, Map<Integer, String> cells) {
  public RowText {
    cells = Collections.unmodifiableMap(new TreeMap<>(cells));
  }

  /** The text of a cell; empty if it is blank. */
  public String at(int column) {
    return cells.getOrDefault(column, "");
  }
}
