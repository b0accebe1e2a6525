package fineweight.workbook.xlsx.splice;

import fineweight.workbook.xlsx.sheet.RowTag;
import fineweight.workbook.xlsx.xml.StartTag;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Cells of a row that are taken out. They are dropped when it is clear that the row stays; a row
 * that held nothing else was ours and goes as a whole.
 */
final class Leavings {
  private final Cutting cutting;
  private final List<long[]> cells = new ArrayList<>();

  /** Where a row that was ours begins and ends, until the next row is known. */
  private long[] row;

  Leavings(Cutting cutting) {
    this.cutting = cutting;
  }

  void add(long start, long end) {
    cells.add(new long[] {start, end});
  }

  boolean isEmpty() {
    return cells.isEmpty();
  }

  /** The row stays. */
  void drop() throws IOException {
    if (cells.isEmpty()) {
      return;
    }
    for (long[] cell : cells) {
      cutting.copyToTag(cell[0]);
      cutting.dropTo(cell[1]);
    }
    cells.clear();
  }

  /** Whether the row holds what was taken out and says only where it is: then it was ours. */
  boolean areAllOf(RowTag tag, long contentEnd) {
    long taken = cells.stream().mapToLong(cell -> cell[1] - cell[0]).sum();
    if (cells.isEmpty() || !tag.referenced() || taken != contentEnd - tag.end()) {
      return false;
    }
    String text = cutting.text(tag.start(), tag.end());
    return StartTag.without(StartTag.without(text, "r"), "spans").matches("<[^\\s=]*\\s*>");
  }

  /** What becomes of the row depends on the next one. */
  void keepForNow(long start, long end) {
    row = new long[] {start, end};
  }

  /** A row may go only if no row behind it is found by counting on from it. */
  void settleRow(boolean goes) throws IOException {
    if (row != null && goes) {
      cells.clear();
      cutting.copyToTag(row[0]);
      cutting.dropTo(row[1]);
    } else if (row != null) {
      drop();
    }
    row = null;
  }
}
