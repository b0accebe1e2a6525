package fineweight.refresh.column;

import fineweight.column.CalculatedColumn;
import fineweight.metal.Metal;
import fineweight.refresh.inventory.Inventory;
import fineweight.refresh.inventory.ReadRow;
import fineweight.workbook.FileFormat;
import fineweight.workbook.SheetLayout;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * Where our columns stand: those that exist stay where their owner has moved them, missing ones go
 * to the right end.
 */
public final class ColumnPlan {
  private final Map<CalculatedColumn, Integer> places = new EnumMap<>(CalculatedColumn.class);

  private ColumnPlan() {}

  /**
   * @param withKey whether a column of piece numbers is needed
   * @param further the columns wanted beyond those that every inventory has
   * @param lastColumn the last used column of the sheet, from 0
   */
  public static ColumnPlan of(
      Inventory inventory,
      SheetLayout layout,
      FileFormat format,
      int lastColumn,
      Collection<ReadRow> rows,
      boolean withKey,
      Set<CalculatedColumn> further) {
    ColumnPlan plan = new ColumnPlan();
    plan.places.putAll(inventory.ours());
    int next = lastColumn + 1;
    boolean besideTable =
        inventory.ours().isEmpty()
            && layout.tables().stream().anyMatch(table -> table.area().lastColumn() == lastColumn);
    if (besideTable) {
      // One empty column, so that an office does not draw our columns into the owner's table.
      next++;
    }
    for (CalculatedColumn column : wanted(rows, withKey, further)) {
      if (!plan.places.containsKey(column)) {
        plan.places.put(column, next++);
      }
    }
    return plan;
  }

  private static Set<CalculatedColumn> wanted(
      Collection<ReadRow> rows, boolean withKey, Set<CalculatedColumn> further) {
    Set<CalculatedColumn> wanted = EnumSet.allOf(CalculatedColumn.class);
    for (CalculatedColumn column : CalculatedColumn.values()) {
      if (column.isFurther() && !further.contains(column)) {
        wanted.remove(column);
      }
    }
    if (!withKey) {
      wanted.remove(CalculatedColumn.KEY);
    }
    for (Metal metal : Set.of(Metal.PLATINUM, Metal.PALLADIUM)) {
      boolean held =
          rows.stream().anyMatch(row -> row.isCoin() && row.appraisal().ounces(metal).isPresent());
      if (!held) {
        wanted.remove(CalculatedColumn.ounces(metal));
      }
    }
    return wanted;
  }

  /** Every column of ours, by its place from 0. */
  public Map<CalculatedColumn, Integer> places() {
    return places;
  }
}
