package fineweight.workbook.xlsx.splice;

import fineweight.workbook.CellPlace;
import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.part.CellRef;
import fineweight.workbook.xlsx.sheet.CellXml;
import fineweight.workbook.xlsx.sheet.RowTag;
import fineweight.workbook.xlsx.sheet.SheetVisitor;
import fineweight.workbook.xlsx.xml.StartTag;
import fineweight.workbook.xlsx.xml.XmlCursor;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Rewrites what stands around the rows and hands the rows on. */
final class SheetSplice implements SheetVisitor {
  private final RowSplice rows;
  private final Cutting cutting;
  private final Frame frame;
  private final boolean stopsAtChange;
  private final List<ColumnWidths.Width> widths = new ArrayList<>();
  private long columnsStart = -1;
  private String columnsPrefix = "";
  private boolean columnsDone;
  private boolean opened;

  /**
   * @param stopsAtChange whether nothing else is to be found out than whether anything changes
   */
  SheetSplice(RowSplice rows, Cutting cutting, Frame frame, boolean stopsAtChange) {
    this.rows = rows;
    this.cutting = cutting;
    this.frame = frame;
    this.stopsAtChange = stopsAtChange;
  }

  @Override
  public void element(XmlCursor at) throws IOException {
    if (at.name().equals("dimension") && frame.written() != null) {
      Area old = CellRef.area(at.attribute("ref"));
      if (old != null) {
        String tag = cutting.text(at.start(), at.end());
        cutting.replace(
            at.start(), at.end(), StartTag.with(tag, "ref", both(old, frame.written())));
      }
    } else if (at.name().equals("cols")) {
      columnsStart = at.start();
      columnsPrefix = at.prefix().isEmpty() ? "" : at.prefix() + ":";
    } else if (at.name().equals("conditionalFormatting")) {
      frame.longer().grow(at, cutting);
    }
  }

  private static String both(Area one, Area other) {
    return reference(
            Math.min(one.firstRow(), other.firstRow()),
            Math.min(one.firstColumn(), other.firstColumn()))
        + ":"
        + reference(
            Math.max(one.lastRow(), other.lastRow()),
            Math.max(one.lastColumn(), other.lastColumn()));
  }

  private static String reference(int row, int column) {
    return CellPlace.letters(column) + (row + 1);
  }

  @Override
  public void child(String parent, XmlCursor at) throws IOException {
    if (parent.equals("cols") && at.name().equals("col")) {
      widths.add(ColumnWidths.Width.of(at, cutting.text(at.start(), at.end())));
    } else if (at.name().equals("dataValidation")) {
      frame.longer().grow(at, cutting);
    }
  }

  @Override
  public void elementEnd(String name, long end) throws IOException {
    if (name.equals("cols") && frame.changesWidths() && !columnsDone) {
      String whole = cutting.text(columnsStart, end);
      String xml = new ColumnWidths(widths).changed(whole, columnsStart, frame, columnsPrefix);
      cutting.replace(columnsStart, end, xml);
      columnsDone = true;
    }
    cutting.settle(end);
  }

  @Override
  public void rowsBegin(XmlCursor at, boolean empty) throws IOException {
    String prefix = at.prefix();
    if (columnsStart < 0 && !frame.widths().isEmpty()) {
      String colon = prefix.isEmpty() ? "" : prefix + ":";
      cutting.copyToTag(at.start());
      cutting.write(new ColumnWidths(List.of()).changed("", 0, frame, colon));
    }
    rows.begin(prefix, new ColumnWidths(widths));
    if (empty && rows.mayWrite()) {
      opened = true;
      String tag = cutting.text(at.start(), at.end());
      cutting.replace(at.start(), at.end(), StartTag.opened(tag));
    }
  }

  @Override
  public void row(RowTag row) throws IOException, WorkbookRefusal {
    rows.row(row);
  }

  @Override
  public boolean wants(int column) {
    return rows.wants(column);
  }

  @Override
  public boolean reads(CellXml cell) {
    return rows.reads(cell);
  }

  @Override
  public boolean placesValues() {
    return rows.seesAll();
  }

  @Override
  public boolean done() {
    return stopsAtChange && rows.touched();
  }

  @Override
  public void cell(CellXml cell) throws IOException, WorkbookRefusal {
    rows.cell(cell);
  }

  @Override
  public void rowEnd(long start, long end) throws IOException, WorkbookRefusal {
    rows.rowEnd(start, end);
  }

  @Override
  public void rowsEnd(long start, long end) throws IOException, WorkbookRefusal {
    rows.end(start);
    if (opened) {
      cutting.write("</" + rows.tag("sheetData") + ">");
    }
  }
}
