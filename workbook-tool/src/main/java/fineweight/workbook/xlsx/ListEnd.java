package fineweight.workbook.xlsx;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellPlace;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.sheet.CellCompare;
import fineweight.workbook.xlsx.sheet.CellReading;
import fineweight.workbook.xlsx.sheet.CellXml;
import fineweight.workbook.xlsx.sheet.RowTag;
import fineweight.workbook.xlsx.sheet.SheetVisitor;
import fineweight.workbook.xlsx.sheet.SheetWalk;
import fineweight.workbook.xlsx.xml.PlainUtf8;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** Looks at the last row of a list for its formats, and below it for what stands in the way. */
final class ListEnd implements SheetVisitor {
  private static final int LONGEST_WORDS = 30;

  private final String sheet;
  private final RowsEdit edit;
  private final AddedRows.Contents wanted;
  private final CellCompare compare;
  private final Map<Integer, Integer> styles = new HashMap<>();
  private final Set<Integer> formulas = new HashSet<>();
  private final Set<Long> kept = new HashSet<>();
  private String obstacle;
  private boolean done;

  ListEnd(String sheet, RowsEdit edit, CellReading reading, AddedRows.Contents wanted) {
    this.sheet = sheet;
    this.edit = edit;
    this.wanted = wanted;
    compare = new CellCompare(sheet, reading);
  }

  void read(String part, InputStream raw) throws IOException, WorkbookRefusal {
    SheetWalk.walk(sheet, part, PlainUtf8.of(raw), this);
  }

  /** The number of the format of each cell in the last row, by column. */
  Map<Integer, Integer> styles() {
    return styles;
  }

  /** What stands in the way, in words; null if nothing does. */
  String obstacle() {
    return obstacle;
  }

  /** Whether a formula of the owner's stands there already and stays. */
  boolean isKept(int row, int column) {
    return kept.contains(key(row, column));
  }

  private static long key(int row, int column) {
    return (long) row << 32 | column;
  }

  @Override
  public void row(RowTag row) {
    done = row.index() > edit.newLastRow();
  }

  @Override
  public boolean done() {
    return done;
  }

  @Override
  public boolean wants(int column) {
    return column >= edit.firstColumn() && column <= edit.lastColumn();
  }

  @Override
  public boolean reads(CellXml cell) {
    return cell.row() > edit.lastRow();
  }

  @Override
  public void cell(CellXml cell) {
    if (done || !wants(cell.column()) || cell.row() < edit.lastRow()) {
      return;
    }
    if (cell.row() == edit.lastRow() && edit.underHeadings()) {
      return;
    }
    if (cell.row() == edit.lastRow()) {
      styles.put(cell.column(), cell.style());
      if (cell.isFormula()) {
        formulas.add(cell.column());
      }
    } else {
      below(cell);
    }
  }

  private void below(CellXml cell) {
    CellContent content = wanted.at(cell.row(), cell.column());
    boolean filledDown = content == null && cell.isFormula() && formulas.contains(cell.column());
    if (filledDown) {
      kept.add(key(cell.row(), cell.column()));
    } else if (obstacle == null
        && !cell.isBlank()
        && !(content != null && compare.same(cell, content))) {
      String words = compare.words(cell);
      String shown =
          words.length() > LONGEST_WORDS ? words.substring(0, LONGEST_WORDS) + "..." : words;
      obstacle =
          "\"%s\" stands in cell %s"
              .formatted(shown, new CellPlace(sheet, cell.row(), cell.column()));
    }
  }
}
