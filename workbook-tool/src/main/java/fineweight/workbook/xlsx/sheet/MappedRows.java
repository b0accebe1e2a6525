package fineweight.workbook.xlsx.sheet;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.xml.DamageException;
import fineweight.workbook.xlsx.xml.XmlCursor;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** Goes over the rows of a sheet by its map and reads the wanted cells from the bytes. */
final class MappedRows {
  private static final int CHUNK = 1 << 15;

  /** Of a cell's tag, counted from the outermost. */
  private static final int DEPTH = 4;

  private static final SheetVisitor EVERYTHING = new SheetVisitor() {};

  private final String sheet;
  private final String part;
  private final InputStream in;
  private final CellMap map;
  private final SheetVisitor visitor;
  private final byte[] outerTags;
  private final NumberTape.Reader tape;
  private final CellMap.Above above = new CellMap.Above();
  private final CellXml cell = new CellXml();
  private final PlainCell plain = new PlainCell();
  private byte[] bytes = new byte[CHUNK];
  private long first;
  private int filled;
  private long position;
  private RowTag row;

  /**
   * @param outerTags the start tags that stand around a row
   */
  MappedRows(
      String sheet,
      String part,
      InputStream in,
      CellMap map,
      SheetVisitor visitor,
      byte[] outerTags) {
    this.sheet = sheet;
    this.part = part;
    this.in = in;
    this.map = map;
    this.visitor = visitor;
    this.outerTags = outerTags;
    tape = map.reader();
    first = map.rowsFrom();
    position = first;
  }

  /** Until the visitor is done or the rows are at their end. */
  void walk() throws IOException, WorkbookRefusal {
    int index = -1;
    while (tape.hasNext() && !visitor.done()) {
      int flags = tape.nextInt();
      index += tape.nextInt();
      long start = position + tape.next();
      long end = start + tape.next();
      boolean styled = (flags & CellMap.STYLED) != 0;
      row =
          new RowTag(
              index,
              start,
              end,
              (flags & CellMap.EMPTY) != 0,
              (flags & CellMap.REFERENCED) != 0,
              styled ? tape.nextInt() : -1);
      position = end;
      forget(start);
      fillTo(end);
      visitor.row(row);
      cells();
    }
    if (!visitor.done()) {
      forget(map.rowsTo());
    }
  }

  private void cells() throws IOException, WorkbookRefusal {
    int column = -1;
    for (int flags = tape.nextInt(); flags != CellMap.ROW_END; flags = tape.nextInt()) {
      column += (flags & CellMap.NEXT_COLUMN) != 0 ? 1 : tape.nextInt();
      cell(flags, column);
    }
    long start = position + tape.next();
    position = start + tape.next();
    fillTo(position);
    visitor.rowEnd(start, position);
  }

  private void cell(int flags, int column) throws IOException, WorkbookRefusal {
    long start = position + ((flags & CellMap.NO_GAP) != 0 ? 0 : tape.next());
    if ((flags & CellMap.AS_ABOVE) == 0) {
      above.set(column, tape.next());
    }
    long tagEnd = start + tape.next();
    boolean empty = (above.of(column) & CellMap.EMPTY) != 0;
    position = empty ? tagEnd : tagEnd + tape.next();
    fillTo(position);
    begin(column);
    if (!empty && visitor.wants(column)) {
      read(start, tagEnd);
    }
    cell.start = start;
    cell.tagEnd = tagEnd;
    cell.end = position;
    visitor.cell(cell);
  }

  private void begin(int column) {
    long look = above.of(column);
    cell.begin(row.index(), column);
    cell.style = (int) (look >>> Byte.SIZE);
    cell.empty = (look & CellMap.EMPTY) != 0;
    cell.referenced = (look & CellMap.REFERENCED) != 0;
    cell.type = CellMap.TYPES.get((int) (look & 0xFF) >>> CellMap.KIND_BITS);
  }

  private void read(long start, long tagEnd) {
    if (!plain.read(cell, bytes, (int) (tagEnd - first), (int) (position - first))) {
      begin(cell.column);
      parse(start);
    }
  }

  /** The whole cell once more, between the tags that declare its names. */
  private void parse(long start) {
    InputStream whole =
        new SequenceInputStream(
            Collections.enumeration(
                List.of(
                    new ByteArrayInputStream(outerTags),
                    piece(row.start(), row.end()),
                    piece(start, position))));
    try (XmlCursor cursor = new XmlCursor(whole, part)) {
      for (int depth = 0; depth < DEPTH; depth++) {
        if (!cursor.nextChild()) {
          throw new DamageException("part " + part + " changed while it was read");
        }
      }
      new CellElements(sheet, cursor, cell, EVERYTHING).read();
    }
  }

  private InputStream piece(long from, long to) {
    return new ByteArrayInputStream(bytes, (int) (from - first), (int) (to - from));
  }

  /** What stands before is not needed any more. */
  private void forget(long offset) throws IOException {
    while (offset > first + filled) {
      first += filled;
      filled = 0;
      fillTo(Math.min(offset, first + CHUNK));
    }
    int gone = (int) (offset - first);
    if (gone > bytes.length / 2) {
      System.arraycopy(bytes, gone, bytes, 0, filled - gone);
      first = offset;
      filled -= gone;
    }
  }

  private void fillTo(long offset) throws IOException {
    while (first + filled < offset) {
      if (filled + CHUNK > bytes.length) {
        bytes = Arrays.copyOf(bytes, bytes.length * 2);
      }
      int most = (int) Math.min(CHUNK, map.rowsTo() - first - filled);
      int n = in.readNBytes(bytes, filled, most);
      filled += n;
      if (n < most) {
        throw new DamageException("part " + part + " is cut off");
      }
    }
  }
}
