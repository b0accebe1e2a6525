package fineweight.workbook;

import java.util.List;

/**
 * A chart in a sheet of our own. It refers to cells of sheets that are drafted in the same edit and
 * stores their values beside the references. Once it is there it stays where its owner moves it.
 *
 * @param name by which it is known again; no two charts of a sheet share one
 * @param words what a reader sees, or hears where he cannot see
 * @param categories one row or one column of cells, the same number as each series has
 * @param fromZero whether the values are drawn from zero; otherwise the office chooses
 * @param place where it stands at first
 */
public record SheetChart(
    String name,
    Kind kind,
    Words words,
    Range categories,
    List<Series> series,
    boolean fromZero,
    Place place) {
  /** What every chart of ours is called, so that a person's own are left alone. */
  public static final String PREFIX = "Fineweight chart ";

  public SheetChart {
    series = List.copyOf(series);
    if (!name.startsWith(PREFIX)) {
      throw new IllegalArgumentException("name: " + name + " does not start with " + PREFIX);
    }
    for (Series each : series) {
      if (each.values().size() != categories.size()) {
        throw new IllegalArgumentException("series: as many values as categories are needed");
      }
    }
  }

  /** How the values are drawn. */
  public enum Kind {
    /** Each series a line of its own dash and mark, the last point labelled with its value. */
    LINE,
    /** Upright bars, each labelled with its value. */
    BAR
  }

  /**
   * @param description for those who cannot see the chart
   * @param across what the categories are
   * @param up what the values are, with their unit
   * @param format of the labels, such as {@code #,##0.00}
   */
  public record Words(String title, String description, String across, String up, String format) {}

  /**
   * @param name the cell that names the series
   */
  public record Series(CellPlace name, Range values) {}

  /** A part of one row or one column of a drafted sheet. */
  public record Range(String sheet, SheetLayout.Area area) {
    public Range {
      if (area.firstRow() != area.lastRow() && area.firstColumn() != area.lastColumn()) {
        throw new IllegalArgumentException("area: neither one row nor one column");
      }
    }

    /** The cells of a column, both rows counted in. */
    public static Range column(String sheet, int column, int firstRow, int lastRow) {
      return new Range(sheet, new SheetLayout.Area(firstRow, column, lastRow, column));
    }

    /** The cells of a row, both columns counted in. */
    public static Range row(String sheet, int row, int firstColumn, int lastColumn) {
      return new Range(sheet, new SheetLayout.Area(row, firstColumn, row, lastColumn));
    }

    public int size() {
      return area.lastRow() - area.firstRow() + area.lastColumn() - area.firstColumn() + 1;
    }

    /** The cell at that place of the range, from 0. */
    public CellPlace cell(int index) {
      boolean upright = area.firstRow() != area.lastRow();
      return new CellPlace(
          sheet,
          area.firstRow() + (upright ? index : 0),
          area.firstColumn() + (upright ? 0 : index));
    }
  }

  /** From the left upper corner of one cell to that of another, all from 0. */
  public record Place(int column, int row, int endColumn, int endRow) {}
}
