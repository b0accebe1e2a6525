package fineweight.workbook.xlsx.part;

import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.xlsx.xml.CharSpan;

/** Cell references as files write them, such as {@code C7}. Rows and columns from 0. */
public final class CellRef {
  public static final int ROWS = 1 << 20;
  public static final int COLUMNS = 1 << 14;

  private static final int MOST_LETTERS = 3;
  private static final int MOST_DIGITS = 7;

  private CellRef() {}

  /**
   * Reads such as {@code C7} or {@code $C$7}.
   *
   * @return packed for {@link #row} and {@link #column}; -1 if it is not one or beyond the limits
   */
  public static long cell(String ref) {
    return cell(ref, 0, ref.length());
  }

  static long cell(String ref, int from, int to) {
    int at = from;
    int column = 0;
    int row = 0;
    while (at < to && (ref.charAt(at) == '$' || letter(ref.charAt(at)))) {
      column = ref.charAt(at) == '$' ? column : column * 26 + (ref.charAt(at) & 0x1F);
      if (column > COLUMNS) {
        return -1;
      }
      at++;
    }
    for (; at < to; at++) {
      int digit = ref.charAt(at) - '0';
      row = row * 10 + digit;
      if (digit < 0 || digit > 9 || row > ROWS) {
        return -1;
      }
    }
    return column == 0 || row == 0 ? -1 : (long) (row - 1) << 32 | (column - 1);
  }

  /** The same for plain characters without {@code $}; -1 for all else. */
  public static long cell(CharSpan ref) {
    int length = ref.length();
    int at = 0;
    int column = 0;
    int row = 0;
    while (at < length && at < MOST_LETTERS && ref.at(at) >= 'A' && ref.at(at) <= 'Z') {
      column = column * 26 + (ref.at(at) & 0x1F);
      at++;
    }
    if (length - at > MOST_DIGITS || column > COLUMNS) {
      return -1;
    }
    for (; at < length; at++) {
      int digit = ref.at(at) - '0';
      if (digit < 0 || digit > 9) {
        return -1;
      }
      row = row * 10 + digit;
    }
    return column == 0 || row == 0 || row > ROWS ? -1 : (long) (row - 1) << 32 | (column - 1);
  }

  public static int row(long cell) {
    return (int) (cell >>> 32);
  }

  public static int column(long cell) {
    return (int) cell;
  }

  /** Reads such as {@code A1:C9} or {@code B2}; null if it is not one. */
  public static Area area(String ref) {
    if (ref == null) {
      return null;
    }
    int colon = ref.indexOf(':');
    long first = cell(ref, 0, colon < 0 ? ref.length() : colon);
    long last = colon < 0 ? first : cell(ref, colon + 1, ref.length());
    return first < 0 || last < 0
        ? null
        : new Area(
            Math.min(row(first), row(last)),
            Math.min(column(first), column(last)),
            Math.max(row(first), row(last)),
            Math.max(column(first), column(last)));
  }

  public static boolean contains(Area area, int row, int column) {
    return row >= area.firstRow()
        && row <= area.lastRow()
        && column >= area.firstColumn()
        && column <= area.lastColumn();
  }

  private static boolean letter(char c) {
    return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
  }
}
