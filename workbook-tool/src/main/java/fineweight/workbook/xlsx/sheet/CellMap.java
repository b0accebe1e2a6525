package fineweight.workbook.xlsx.sheet;

import java.util.Arrays;
import java.util.List;

/**
 * Where each row and cell of a sheet stands in its part, as the parser has found it. A later pass
 * over the same bytes goes by the map and needs no parser for the rows. It takes about four bytes a
 * cell.
 */
public final class CellMap {
  /** For a sheet that every pass has to parse. */
  public static final CellMap NONE = new CellMap();

  static final int NEXT_COLUMN = 1;
  static final int NO_GAP = 2;
  static final int AS_ABOVE = 4;
  static final int ROW_END = 8;
  static final int EMPTY = 1;
  static final int REFERENCED = 2;
  static final int STYLED = 4;
  static final int KIND_BITS = 2;
  static final List<String> TYPES = List.of("n", "s", "str", "inlineStr", "b", "e", "d");

  private static final long LARGEST = 64L << 20;

  private final NumberTape tape = new NumberTape();
  private final Above above = new Above();
  private boolean complete;
  private boolean unfit;
  private long rowsFrom;
  private long rowsTo;
  private long position;
  private int lastRow = -1;
  private int lastColumn;

  /** The format and kind that a column's last cell had. */
  static final class Above {
    private long[] looks = new long[64];

    long of(int column) {
      return column < looks.length ? looks[column] : 0;
    }

    void set(int column, long look) {
      if (column >= looks.length) {
        looks = Arrays.copyOf(looks, Math.max(column + 1, looks.length * 2));
      }
      looks[column] = look;
    }
  }

  /** Whether a pass can go by it. */
  public boolean isComplete() {
    return complete;
  }

  /** Behind the start tag around the rows. */
  long rowsFrom() {
    return rowsFrom;
  }

  /** Where the end tag around the rows begins. */
  long rowsTo() {
    return rowsTo;
  }

  NumberTape.Reader reader() {
    return tape.reader();
  }

  void begin(long behindTag) {
    rowsFrom = behindTag;
    position = behindTag;
  }

  void row(RowTag row) {
    if (unfit) {
      return;
    }
    unfit = tape.size() > LARGEST;
    boolean styled = row.style() >= 0;
    tape.add(
        (row.empty() ? EMPTY : 0) | (row.referenced() ? REFERENCED : 0) | (styled ? STYLED : 0));
    tape.add(row.index() - lastRow);
    tape.add(row.start() - position);
    tape.add(row.end() - row.start());
    if (styled) {
      tape.add(row.style());
    }
    position = row.end();
    lastRow = row.index();
    lastColumn = -1;
  }

  void cell(CellXml cell) {
    int type = unfit ? -1 : typeNumber(cell.type);
    unfit |= type < 0 || cell.style < 0;
    if (unfit) {
      return;
    }
    int kind = type << KIND_BITS | (cell.empty ? EMPTY : 0) | (cell.referenced ? REFERENCED : 0);
    long look = (long) cell.style << Byte.SIZE | kind;
    int columns = cell.column - lastColumn;
    long gap = cell.start - position;
    boolean asAbove = look == above.of(cell.column);
    tape.add((columns == 1 ? NEXT_COLUMN : 0) | (gap == 0 ? NO_GAP : 0) | (asAbove ? AS_ABOVE : 0));
    if (columns != 1) {
      tape.add(columns);
    }
    if (gap != 0) {
      tape.add(gap);
    }
    if (!asAbove) {
      tape.add(look);
      above.set(cell.column, look);
    }
    tape.add(cell.tagEnd - cell.start);
    if (!cell.empty) {
      tape.add(cell.end - cell.tagEnd);
    }
    position = cell.end;
    lastColumn = cell.column;
  }

  /** Most are a number or a shared text. */
  private static int typeNumber(String type) {
    return type.equals("n") ? 0 : type.equals("s") ? 1 : TYPES.indexOf(type);
  }

  void rowEnd(long start, long end) {
    if (!unfit) {
      tape.add(ROW_END);
      tape.add(start - position);
      tape.add(end - start);
      position = end;
    }
  }

  void end(long endTag) {
    rowsTo = endTag;
    complete = !unfit && lastRow >= 0;
  }
}
