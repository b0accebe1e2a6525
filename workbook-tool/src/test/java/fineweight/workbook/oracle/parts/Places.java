package fineweight.workbook.oracle.parts;

import fineweight.workbook.CellPlace;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Cell references as the file writes them. */
public final class Places {
  private static final Pattern CELL = Pattern.compile("\\$?([A-Z]{1,3})\\$?([0-9]{1,7})");

  private Places() {}

  /** All four from 0 and counted in. */
  public record Area(String sheet, int firstRow, int firstColumn, int lastRow, int lastColumn) {
    public static final int LAST_ROW = 1_048_575;
    public static final int LAST_COLUMN = 16_383;

    public boolean contains(CellPlace place) {
      return sheet.equalsIgnoreCase(place.sheet())
          && place.row() >= firstRow
          && place.row() <= lastRow
          && place.column() >= firstColumn
          && place.column() <= lastColumn;
    }

    public static Area of(CellPlace place) {
      return new Area(place.sheet(), place.row(), place.column(), place.row(), place.column());
    }
  }

  /** The place that a reference such as {@code B7} or {@code $B$7} means. */
  public static CellPlace place(String sheet, String reference) {
    Matcher cell = CELL.matcher(reference);
    if (!cell.matches()) {
      throw new IllegalArgumentException("reference: " + reference);
    }
    return new CellPlace(sheet, Integer.parseInt(cell.group(2)) - 1, column(cell.group(1)));
  }

  /** The area that {@code B7:C9} or {@code B7} means. */
  public static Area area(String sheet, String reference) {
    String[] ends = reference.split(":");
    CellPlace first = place(sheet, ends[0]);
    CellPlace last = place(sheet, ends[ends.length - 1]);
    return new Area(sheet, first.row(), first.column(), last.row(), last.column());
  }

  /** A is 0. */
  public static int column(String letters) {
    int column = 0;
    for (char letter : letters.toCharArray()) {
      column = column * 26 + (letter - 'A' + 1);
    }
    return column - 1;
  }
}
