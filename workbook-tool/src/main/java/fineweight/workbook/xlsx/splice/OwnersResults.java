package fineweight.workbook.xlsx.splice;

import fineweight.workbook.CellValue;
import fineweight.workbook.xlsx.sheet.CellSet;
import java.util.HashMap;
import java.util.Map;

/** What becomes of the stored results of the owner's formulas on one sheet. */
public final class OwnersResults {
  private CellSet dropped = new CellSet();
  private final Map<Long, CellValue> fresh = new HashMap<>();

  /** These results go. */
  public void drop(CellSet cells) {
    dropped = cells;
  }

  /** This result takes the place of the one there. */
  public void put(int row, int column, CellValue result) {
    fresh.put(key(row, column), result);
  }

  private static long key(int row, int column) {
    return ((long) row << 32) | column;
  }

  public boolean isEmpty() {
    return dropped.isEmpty() && fresh.isEmpty();
  }

  boolean drops(int row, int column) {
    return dropped.contains(row, column);
  }

  /** Null if nothing new is known. */
  CellValue fresh(int row, int column) {
    return fresh.isEmpty() ? null : fresh.get(key(row, column));
  }

  boolean concerns(int row, int column) {
    return drops(row, column) || fresh(row, column) != null;
  }
}
