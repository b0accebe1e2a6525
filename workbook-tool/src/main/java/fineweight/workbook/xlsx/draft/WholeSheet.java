package fineweight.workbook.xlsx.draft;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellPlace;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.sheet.CellCompare;
import fineweight.workbook.xlsx.sheet.CellReading;
import fineweight.workbook.xlsx.sheet.CellSet;
import fineweight.workbook.xlsx.sheet.CellXml;
import fineweight.workbook.xlsx.sheet.SheetVisitor;
import fineweight.workbook.xlsx.sheet.SheetWalk;
import fineweight.workbook.xlsx.xml.PlainUtf8;
import fineweight.workbook.xlsx.xml.XmlCursor;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Compares a sheet as it stands with the cells that it shall have, all others being none. */
public final class WholeSheet implements SheetVisitor {
  private final String sheet;
  private final CellCompare compare;
  private final TreeMap<Long, CellContent> missing;
  private final Consumer<CellChange> changes;
  private final CellSet changed;
  private final TreeSet<String> extras = new TreeSet<>();

  private WholeSheet(
      String sheet,
      CellReading reading,
      Map<Long, CellContent> wanted,
      CellSet changed,
      Consumer<CellChange> changes) {
    this.sheet = sheet;
    compare = new CellCompare(sheet, reading);
    missing = new TreeMap<>(wanted);
    this.changed = changed;
    this.changes = changes;
  }

  /**
   * @param raw null if there is no such sheet yet
   * @param wanted by row and column, packed as {@link #key}
   * @param changed takes the cells that differ
   * @return the sheet's links and lists to choose from, as text to compare
   */
  public static TreeSet<String> compare(
      String sheet,
      InputStream raw,
      CellReading reading,
      Map<Long, CellContent> wanted,
      CellSet changed,
      Consumer<CellChange> changes)
      throws IOException, WorkbookRefusal {
    WholeSheet whole = new WholeSheet(sheet, reading, wanted, changed, changes);
    if (raw != null) {
      SheetWalk.walk(sheet, sheet, PlainUtf8.of(raw), whole);
    }
    whole.missing.forEach(
        (key, content) -> whole.change((int) (key >> 32), (int) (long) key, "", content));
    return whole.extras;
  }

  public static long key(int row, int column) {
    return (long) row << 32 | column;
  }

  private void change(int row, int column, String before, CellContent content) {
    if (!before.isEmpty() || !CellCompare.words(content).isEmpty()) {
      changed.add(row, column);
      CellPlace place = new CellPlace(sheet, row, column);
      changes.accept(new CellChange(place, before, CellCompare.words(content)));
    }
  }

  @Override
  public void cell(CellXml cell) {
    CellContent wanted = missing.remove(key(cell.row(), cell.column()));
    CellContent content = wanted == null ? CellContent.EMPTY : wanted;
    if (!compare.same(cell, content)) {
      change(cell.row(), cell.column(), compare.words(cell), content);
    }
  }

  @Override
  public void child(String parent, XmlCursor at) {
    if (parent.equals("hyperlinks")) {
      extras.add(at.attribute("ref") + " " + at.attribute("location"));
    } else if (parent.equals("dataValidations")) {
      String cells = at.attribute("sqref");
      extras.add(cells + " " + (at.nextChild() ? at.text() : ""));
    }
  }
}
