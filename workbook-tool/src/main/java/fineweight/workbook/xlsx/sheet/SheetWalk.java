package fineweight.workbook.xlsx.sheet;

import fineweight.workbook.CellPlace;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.part.CellRef;
import fineweight.workbook.xlsx.xml.CharSpan;
import fineweight.workbook.xlsx.xml.DamageException;
import fineweight.workbook.xlsx.xml.XmlCursor;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import org.codehaus.stax2.XMLStreamReader2;

/**
 * Walks over a worksheet part. Rows and cells without a reference are counted on; rows and cells
 * that occur twice, stand out of order or beyond the limits are refused.
 */
public final class SheetWalk {
  private final String sheet;
  private final String part;
  private final XmlCursor cursor;
  private final SheetVisitor visitor;

  /** Null if there is no map to go by. */
  private final Mapped mapped;

  private final CellXml cell = new CellXml();
  private final CellElements elements;
  private final CharSpan span = new CharSpan();
  private String namespace;
  private int lastRow = -1;
  private int lastColumn;
  private boolean seenRows;
  private long rootStart;
  private long rootEnd;
  private String rowReference;
  private String rowFormat;
  private String rowFormatted;

  private SheetWalk(
      String sheet, String part, XmlCursor cursor, SheetVisitor visitor, Mapped mapped) {
    this.sheet = sheet;
    this.part = part;
    this.cursor = cursor;
    this.visitor = visitor;
    this.mapped = mapped;
    elements = new CellElements(sheet, cursor, cell, visitor);
  }

  /** A map and the bytes that it is of. */
  private record Mapped(CellMap map, InputStream bytes, GapStream gap) {}

  /**
   * @param utf8 the part's bytes
   */
  public static void walk(String sheet, String part, InputStream utf8, SheetVisitor visitor)
      throws IOException, WorkbookRefusal {
    walk(sheet, part, utf8, visitor, CellMap.NONE);
  }

  /**
   * The same by a map of the same bytes, where there is one. Of the cells that the visitor does not
   * want no more is told than place and format.
   *
   * @param utf8 the part's bytes
   */
  public static void walk(
      String sheet, String part, InputStream utf8, SheetVisitor visitor, CellMap map)
      throws IOException, WorkbookRefusal {
    boolean goes = map.isComplete();
    Mapped mapped = goes ? new Mapped(map, utf8, new GapStream(utf8, map.rowsFrom())) : null;
    try (XmlCursor cursor = new XmlCursor(goes ? mapped.gap() : utf8, part)) {
      if (!cursor.nextChild() || !cursor.name().equals("worksheet")) {
        throw new DamageException("part " + part + " is not a worksheet");
      }
      new SheetWalk(sheet, part, cursor, visitor, mapped).worksheet();
    }
  }

  private void worksheet() throws IOException, WorkbookRefusal {
    namespace = cursor.namespace();
    rootStart = cursor.start();
    rootEnd = cursor.end();
    while (cursor.nextChild()) {
      if (is("sheetData")) {
        rows();
      } else {
        other();
      }
      if (visitor.done()) {
        return;
      }
    }
    cursor.finish();
  }

  private boolean is(String name) {
    return cursor.name().equals(name) && cursor.namespace().equals(namespace);
  }

  private void other() throws IOException, WorkbookRefusal {
    String name = cursor.name();
    boolean empty = cursor.isEmptyElement();
    long end = cursor.end();
    visitor.element(cursor);
    while (cursor.nextChild()) {
      int outer = cursor.depth() - 1;
      visitor.child(name, cursor);
      cursor.leave(outer);
    }
    visitor.elementEnd(name, empty ? end : cursor.end());
  }

  private void rows() throws IOException, WorkbookRefusal {
    if (seenRows) {
      throw new DamageException("sheet \"" + sheet + "\" has its rows twice");
    }
    seenRows = true;
    boolean empty = cursor.isEmptyElement();
    long end = cursor.end();
    visitor.rowsBegin(cursor, empty);
    if (mapped != null) {
      mappedRows(end);
    }
    while (!visitor.done() && cursor.nextChild()) {
      if (is("row")) {
        row();
      } else {
        cursor.skip();
      }
    }
    if (!visitor.done()) {
      visitor.rowsEnd(empty ? end : cursor.start(), empty ? end : cursor.end());
    }
  }

  private void mappedRows(long tagEnd) throws IOException, WorkbookRefusal {
    byte[] before = mapped.gap().before();
    if (tagEnd != before.length) {
      throw new DamageException("part " + part + " changed while it was read");
    }
    int tag = (int) cursor.start();
    ByteBuffer outer = ByteBuffer.allocate((int) (rootEnd - rootStart) + before.length - tag);
    outer.put(before, (int) rootStart, (int) (rootEnd - rootStart));
    outer.put(before, tag, before.length - tag);
    CellMap map = mapped.map();
    new MappedRows(sheet, part, mapped.bytes(), map, visitor, outer.array()).walk();
    mapped.gap().pass();
    cursor.passOver(map.rowsTo() - map.rowsFrom());
  }

  private void row() throws IOException, WorkbookRefusal {
    rowAttributes();
    String reference = rowReference;
    int index = reference == null ? lastRow + 1 : rowNumber(reference) - 1;
    if (index <= lastRow) {
      throw new DamageException(
          "row %d of sheet \"%s\" occurs twice or out of order".formatted(index + 1, sheet));
    }
    if (index < 0 || index >= CellRef.ROWS) {
      throw beyond(reference);
    }
    lastRow = index;
    lastColumn = -1;
    boolean empty = cursor.isEmptyElement();
    long end = cursor.end();
    boolean formatted = "1".equals(rowFormatted) || "true".equals(rowFormatted);
    String format = formatted ? rowFormat : null;
    visitor.row(
        new RowTag(
            index,
            cursor.start(),
            end,
            empty,
            reference != null,
            format == null ? -1 : number(format)));
    while (cursor.nextChild()) {
      if (is("c")) {
        cell();
      } else {
        cursor.skip();
      }
    }
    visitor.rowEnd(empty ? end : cursor.start(), empty ? end : cursor.end());
  }

  private void rowAttributes() {
    rowReference = null;
    rowFormat = null;
    rowFormatted = null;
    XMLStreamReader2 reader = cursor.attributes();
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      switch (plainName(reader, i)) {
        case "r" -> rowReference = reader.getAttributeValue(i);
        case "s" -> rowFormat = reader.getAttributeValue(i);
        case "customFormat" -> rowFormatted = reader.getAttributeValue(i);
        default -> {}
      }
    }
  }

  private int rowNumber(String text) {
    return text.length() > 7 ? beyondRow(text) : number(text);
  }

  private int beyondRow(String text) {
    throw beyond(text);
  }

  private DamageException beyond(String reference) {
    return new DamageException(
        "sheet \"%s\" has the cell or row %s, which no sheet has".formatted(sheet, reference));
  }

  private int number(String text) {
    try {
      return Integer.parseInt(text.strip());
    } catch (NumberFormatException e) {
      throw new DamageException(
          "sheet \"%s\" has \"%s\" near row %d where a number must be"
              .formatted(sheet, text, lastRow + 1),
          e);
    }
  }

  private void cell() throws IOException, WorkbookRefusal {
    cell.begin(lastRow, lastColumn + 1);
    cell.referenced = false;
    attributes();
    if (cell.column <= lastColumn) {
      throw new DamageException(
          "cell " + new CellPlace(sheet, lastRow, cell.column) + " occurs twice or out of order");
    }
    lastColumn = cell.column;
    if (lastColumn >= CellRef.COLUMNS) {
      throw beyond(CellPlace.letters(lastColumn) + (lastRow + 1));
    }
    cell.start = cursor.start();
    cell.tagEnd = cursor.end();
    cell.empty = cursor.isEmptyElement();
    if (visitor.wants(cell.column)) {
      elements.read();
    } else {
      cursor.skip();
    }
    cell.end = cell.empty ? cell.tagEnd : cursor.end();
    visitor.cell(cell);
  }

  private void attributes() {
    XMLStreamReader2 reader = cursor.attributes();
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String name = reader.getAttributeLocalName(i);
      if (name.length() == 1 && reader.getAttributePrefix(i).isEmpty()) {
        attribute(name.charAt(0), i);
      }
    }
  }

  /** Only what is written oddly is made a text of. */
  private void attribute(char name, int index) {
    boolean plain = cursor.attribute(index, span);
    switch (name) {
      case 'r' -> place(plain ? CellRef.cell(span) : -1, index);
      case 's' -> {
        int style = plain ? span.number() : -1;
        cell.style = style < 0 ? number(text(index)) : style;
      }
      case 't' -> {
        String type = plain ? CellXml.type(span) : null;
        cell.type = type == null ? text(index) : type;
      }
      default -> {}
    }
  }

  private String text(int index) {
    return cursor.attributes().getAttributeValue(index);
  }

  /** An attribute's name; of one in a namespace nothing is ours. */
  private static String plainName(XMLStreamReader2 reader, int i) {
    return reader.getAttributePrefix(i).isEmpty() ? reader.getAttributeLocalName(i) : "";
  }

  private void place(long found, int index) {
    long place = found < 0 ? CellRef.cell(text(index)) : found;
    if (place < 0) {
      throw beyond(text(index));
    }
    if (CellRef.row(place) != lastRow) {
      throw new DamageException(
          "sheet \"%s\" has cell %s in row %d".formatted(sheet, text(index), lastRow + 1));
    }
    cell.referenced = true;
    cell.column = CellRef.column(place);
  }
}
