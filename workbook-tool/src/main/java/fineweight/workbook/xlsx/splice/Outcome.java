package fineweight.workbook.xlsx.splice;

import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.xlsx.sheet.CellSet;

/** What a pass over a sheet found and did. */
public final class Outcome {
  final CellSet changed = new CellSet();
  long changes;
  boolean formulaGone;
  boolean formulaWritten;
  int lastWrittenRow = -1;
  int lastWrittenColumn = -1;
  int firstWrittenRow = Integer.MAX_VALUE;
  int firstWrittenColumn = Integer.MAX_VALUE;
  int lastKeptColumn = -1;

  /** Whether any byte of the part changes, be it only a format. */
  boolean touched;

  void wrote(int row, int column) {
    firstWrittenRow = Math.min(firstWrittenRow, row);
    firstWrittenColumn = Math.min(firstWrittenColumn, column);
    lastWrittenRow = Math.max(lastWrittenRow, row);
    lastWrittenColumn = Math.max(lastWrittenColumn, column);
  }

  /** Null if nothing was written. */
  Area written() {
    return lastWrittenRow < 0
        ? null
        : new Area(firstWrittenRow, firstWrittenColumn, lastWrittenRow, lastWrittenColumn);
  }

  public boolean touched() {
    return touched;
  }

  /** The cells whose content differs now. */
  public CellSet changed() {
    return changed;
  }

  public long changes() {
    return changes;
  }

  /** Whether a cell that held a formula holds none now, or another that does now. */
  public boolean formulasMoved() {
    return formulaGone || formulaWritten;
  }

  public boolean writesFormulas() {
    return formulaWritten;
  }
}
