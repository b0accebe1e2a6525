package fineweight.workbook.xlsx.splice;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;

/**
 * What one cell shall be.
 *
 * @param content null if the cell shall go, format and all
 * @param look null for a header, which takes its neighbour's format unchanged
 */
record Wish(CellContent content, CellLook look) {
  static final Wish GONE = new Wish(null, null);

  boolean writes() {
    return content != null && !(content instanceof CellContent.Empty);
  }

  /** An empty text is no content. */
  static Wish of(CellContent content, CellLook look) {
    boolean empty = content instanceof CellContent.Text text && text.value().isEmpty();
    return new Wish(empty ? CellContent.EMPTY : content, look);
  }
}
