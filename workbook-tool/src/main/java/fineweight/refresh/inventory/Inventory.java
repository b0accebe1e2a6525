package fineweight.refresh.inventory;

import fineweight.column.CalculatedColumn;
import fineweight.column.FoundTable;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The inventory in a workbook. Immutable.
 *
 * @param sheet the sheet's name; empty in a text table
 * @param table where its headings are and what they mean
 * @param ours the columns that we put in earlier, from 0
 * @param others further sheets that look like lists of coins but were not taken
 */
public record Inventory(
    String sheet, FoundTable table, Map<CalculatedColumn, Integer> ours, List<String> others) {
  public Inventory {
    Map<CalculatedColumn, Integer> copy = new EnumMap<>(CalculatedColumn.class);
    copy.putAll(ours);
    ours = Collections.unmodifiableMap(copy);
    others = List.copyOf(others);
  }
}
