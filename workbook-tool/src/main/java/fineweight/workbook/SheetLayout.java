package fineweight.workbook;

import java.util.List;

/**
 * What stands in a sheet beside its cells.
 *
 * @param tables table objects
 * @param merged merged areas
 */
public record SheetLayout(List<Table> tables, List<Area> merged) {
  public SheetLayout {
    tables = List.copyOf(tables);
    merged = List.copyOf(merged);
  }

  /** All four from 0 and counted in. */
  public record Area(int firstRow, int firstColumn, int lastRow, int lastColumn) {}

  /**
   * A table object.
   *
   * @param headerRows 0 or 1
   * @param totalsRows 0 or 1
   */
  public record Table(String name, Area area, int headerRows, int totalsRows) {}
}
