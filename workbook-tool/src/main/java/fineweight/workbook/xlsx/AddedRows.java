package fineweight.workbook.xlsx;

import fineweight.workbook.CellContent;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.SheetLayout;
import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.part.CellRef;
import fineweight.workbook.xlsx.part.TablePart;
import fineweight.workbook.xlsx.sheet.CellReading;
import fineweight.workbook.xlsx.splice.ColumnTarget;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Rows put under a list of one sheet, thought through before anything is written. */
final class AddedRows {
  private final OpenedSheet sheet;
  private final RowsEdit edit;
  private final boolean counts1904;
  private final ListEnd end;
  private final LongerTables tables;

  private AddedRows(
      OpenedSheet sheet, RowsEdit edit, boolean counts1904, ListEnd end, LongerTables tables) {
    this.sheet = sheet;
    this.edit = edit;
    this.counts1904 = counts1904;
    this.end = end;
    this.tables = tables;
  }

  /**
   * @throws WorkbookRefusal if something of the owner's stands in the way
   */
  static AddedRows of(OpenedPackage source, OpenedSheet sheet, CellReading reading, RowsEdit edit)
      throws IOException, WorkbookRefusal {
    if (sheet.facts().isProtected()) {
      throw new WorkbookRefusal(
          WorkbookRefusal.Kind.PROTECTED,
          "The sheet \"%s\" is protected against changes; take the protection off in your office program first."
              .formatted(sheet.name()));
    }
    if (edit.newLastRow() >= CellRef.ROWS) {
      throw edit.refusal("the sheet ends there");
    }
    LongerTables tables = LongerTables.of(source, sheet, edit);
    refuseMerged(sheet, edit);
    boolean counts1904 = reading.counts1904();
    ListEnd end = new ListEnd(sheet.name(), edit, reading, content(edit, counts1904));
    try (InputStream in = source.zip().xml(sheet.entry().part())) {
      end.read(sheet.entry().part(), in);
    }
    if (end.obstacle() != null) {
      throw edit.refusal(end.obstacle());
    }
    return new AddedRows(sheet, edit, counts1904, end, tables);
  }

  /** Gives what a cell shall hold; null where the edit says nothing. */
  @FunctionalInterface
  interface Contents {
    CellContent at(int row, int column);
  }

  private static Contents content(RowsEdit edit, boolean counts1904) {
    return (row, column) ->
        edit.wanted(row, column) instanceof CellContent.Day day
            ? day.serial(counts1904)
            : edit.wanted(row, column);
  }

  private static void refuseMerged(OpenedSheet sheet, RowsEdit edit) throws WorkbookRefusal {
    for (Area area : sheet.facts().merged()) {
      boolean meets =
          area.lastRow() > edit.lastRow()
              && area.firstRow() <= edit.newLastRow()
              && area.lastColumn() >= edit.firstColumn()
              && area.firstColumn() <= edit.lastColumn();
      if (meets) {
        throw edit.refusal("cells are merged around row %d".formatted(area.firstRow() + 1));
      }
    }
  }

  OpenedSheet sheet() {
    return sheet;
  }

  List<ColumnTarget> targets() {
    TreeSet<Integer> columns = new TreeSet<>(end.styles().keySet());
    edit.rows().forEach(row -> columns.addAll(row.keySet()));
    edit.corrections().values().forEach(row -> columns.addAll(row.keySet()));
    Contents contents = content(edit, counts1904);
    List<ColumnTarget> targets = new ArrayList<>();
    for (int column : columns) {
      int style = end.styles().getOrDefault(column, 0);
      targets.add(
          ColumnTarget.under(edit, column, style, row -> content(contents, row, column, style)));
    }
    return targets;
  }

  private CellContent content(Contents contents, int row, int column, int style) {
    CellContent wanted = contents.at(row, column);
    boolean looksAlike = row > edit.lastRow() && row <= edit.newLastRow() && style > 0;
    boolean onlyLook = wanted == null && looksAlike && !end.isKept(row, column);
    return onlyLook ? CellContent.EMPTY : wanted;
  }

  Map<String, byte[]> tableParts() {
    return tables.parts();
  }

  /** The sheet's tables as they will be. */
  List<TablePart> tables() {
    return tables.all();
  }

  /** Whether the table holds the list's last row among its data. */
  static boolean holdsList(SheetLayout.Table table, RowsEdit edit) {
    Area area = table.area();
    return edit.lastRow() >= area.firstRow()
        && edit.lastRow() <= area.lastRow() - table.totalsRows()
        && edit.lastColumn() >= area.firstColumn()
        && edit.firstColumn() <= area.lastColumn();
  }
}
