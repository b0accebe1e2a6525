package fineweight.workbook.xlsx.sheet;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.xml.XmlCursor;
import java.io.IOException;

/** Sees a sheet from top to bottom. Every offset counts bytes of the part. */
public interface SheetVisitor {
  /** An element beside the cells, such as {@code dimension} or {@code cols}. */
  default void element(XmlCursor at) throws IOException, WorkbookRefusal {}

  default void elementEnd(String name, long end) throws IOException, WorkbookRefusal {}

  /** A child of such an element. */
  default void child(String parent, XmlCursor at) throws IOException, WorkbookRefusal {}

  /**
   * The start tag around all rows.
   *
   * @param empty whether it is its own end
   */
  default void rowsBegin(XmlCursor at, boolean empty) throws IOException, WorkbookRefusal {}

  default void row(RowTag row) throws IOException, WorkbookRefusal {}

  /** Whether the content of cells in that column is wanted; the cell is told in any case. */
  default boolean wants(int column) {
    return true;
  }

  /**
   * Whether value and formula are wanted as text, now that the cell's place, type and format are
   * known; else only their kinds and places are told.
   */
  default boolean reads(CellXml cell) {
    return true;
  }

  /** Whether formulas are wanted as text even where {@link #reads} wants nothing. */
  default boolean readsFormulas() {
    return false;
  }

  /** Whether the places of values matter. */
  default boolean placesValues() {
    return false;
  }

  /** The cell may be kept only until the next call. */
  default void cell(CellXml cell) throws IOException, WorkbookRefusal {}

  /**
   * @param start of the row's end tag, or behind its empty tag
   */
  default void rowEnd(long start, long end) throws IOException, WorkbookRefusal {}

  default void rowsEnd(long start, long end) throws IOException, WorkbookRefusal {}

  /** Whether the rest of the part is not wanted. */
  default boolean done() {
    return false;
  }
}
