package fineweight.workbook.xlsx.splice;

import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.xlsx.sheet.CellSet;

/** What a pass over a sheet found and did. */
public final class Outcome {
  private final CellSet changed = new CellSet();
  private final boolean listed;
  long changes;
  boolean formulaGone;
  boolean formulaWritten;
  int lastWrittenRow = -1;
  int lastWrittenColumn = -1;
  int firstWrittenRow = Integer.MAX_VALUE;
  int firstWrittenColumn = Integer.MAX_VALUE;
  int lastKeptColumn = -1;

  /** Whether the pass ended at the first change: then the other figures are not the whole. */
  boolean partial;

  /** Whether any byte of the part changes, be it only a format. */
  boolean touched;

  /**
   * @param listed whether it matters which cells change
   */
  Outcome(boolean listed) {
    this.listed = listed;
  }

  void changed(int row, int column) {
    touched = true;
    changes++;
    if (listed) {
      changed.add(row, column);
    }
  }

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

  /** The cells whose content differs now, if they are listed. */
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
