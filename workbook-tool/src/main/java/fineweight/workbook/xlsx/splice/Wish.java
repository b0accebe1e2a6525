package fineweight.workbook.xlsx.splice;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;

/**
 * What one cell shall be.
 *
 * @param content null if the cell shall go, format and all
 * @param look null for a header, which takes its neighbour's format unchanged
 * @param style the number of the format of a new cell; -1 to find one by the look
 */
record Wish(CellContent content, CellLook look, int style) {
  static final Wish GONE = new Wish(null, null, -1);

  boolean writes() {
    return content != null && (!isFormatOnly() || style > 0);
  }

  /** Whether a cell that is not there yet gets nothing but a format. */
  boolean isFormatOnly() {
    return content instanceof CellContent.Empty;
  }

  Wish styled(int number) {
    return new Wish(content, look, number);
  }

  /** An empty text is no content. */
  static Wish of(CellContent content, CellLook look) {
    boolean empty = content instanceof CellContent.Text text && text.value().isEmpty();
    return new Wish(empty ? CellContent.EMPTY : content, look, -1);
  }
}
