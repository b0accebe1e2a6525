package fineweight.workbook.corpus;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.CellPlace;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.NamedCell;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.WorkbookEdit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

/** An edit as the program makes them: columns of every kind, hidden names, a sheet of our own. */
public final class Filling {
  static final String OWN_SHEET = "Our summary";
  static final int COLUMNS = 5;

  private final String sheet;
  private final int headerRow;
  private final int firstRow;
  private final int lastRow;
  private final int firstColumn;

  /**
   * @param firstColumn the first column to fill, from 0, as all others
   */
  public Filling(String sheet, int headerRow, int firstRow, int lastRow, int firstColumn) {
    this.sheet = sheet;
    this.headerRow = headerRow;
    this.firstRow = firstRow;
    this.lastRow = lastRow;
    this.firstColumn = firstColumn;
  }

  /** For the planted sheet. */
  public static Filling ofPlanted() {
    return new Filling(
        Planting.SHEET,
        Planting.HEADER_ROW,
        Planting.FIRST_ROW,
        Planting.LAST_ROW,
        Planting.NEXT_COLUMN);
  }

  /** The columns alone. */
  public WorkbookEdit columns() {
    return new WorkbookEdit(
        List.of(new SheetEdit(sheet, headerRow, firstRow, lastRow, edits())),
        List.of(),
        names(),
        WorkbookEdit.Removal.NOTHING);
  }

  /** The columns and a sheet of our own. */
  public WorkbookEdit columnsAndSheet() {
    WorkbookEdit columns = columns();
    return new WorkbookEdit(
        columns.sheets(), List.of(draft()), columns.names(), columns.removals());
  }

  /** All of it taken out again. */
  public WorkbookEdit removal(boolean withSheet) {
    List<WorkbookEdit.ColumnPlace> places = new ArrayList<>();
    for (int i = 0; i < COLUMNS; i++) {
      places.add(new WorkbookEdit.ColumnPlace(sheet, headerRow, firstColumn + i));
    }
    return new WorkbookEdit(
        List.of(),
        List.of(),
        List.of(),
        new WorkbookEdit.Removal(
            places,
            withSheet ? List.of(OWN_SHEET) : List.of(),
            names().stream().map(NamedCell::name).toList()));
  }

  /** What stands in a cell of ours afterwards: a number, a text, or null. */
  Object expected(CellPlace place) {
    int column = place.column() - firstColumn;
    if (place.row() == headerRow) {
      return "Ours " + column;
    }
    CellContent content = contents().get(column).apply(place.row());
    if (content instanceof CellContent.Number number) {
      return number.value();
    } else if (content instanceof CellContent.Text text) {
      return text.value();
    } else if (content instanceof CellContent.Formula formula) {
      return formula.text() == null ? formula.result() : formula.text();
    }
    return null;
  }

  List<CellPlace> ours() {
    List<CellPlace> places = new ArrayList<>();
    for (int column = firstColumn; column < firstColumn + COLUMNS; column++) {
      places.add(new CellPlace(sheet, headerRow, column));
      for (int row = firstRow; row <= lastRow; row++) {
        places.add(new CellPlace(sheet, row, column));
      }
    }
    return places;
  }

  private List<ColumnEdit> edits() {
    List<ColumnEdit> edits = new ArrayList<>();
    List<IntFunction<CellContent>> contents = contents();
    for (int i = 0; i < COLUMNS; i++) {
      CellLook look =
          switch (i) {
            case 0 -> CellLook.number("0.0000");
            case 2 -> CellLook.number("#,##0.00");
            case 3 -> new CellLook("", true);
            default -> CellLook.GENERAL;
          };
      edits.add(new ColumnEdit(firstColumn + i, "Ours " + i, look, 8 + i, contents.get(i)));
    }
    return edits;
  }

  private List<IntFunction<CellContent>> contents() {
    String figure = CellPlace.letters(firstColumn);
    return List.of(
        row -> new CellContent.Number(ounces(row)),
        row -> row % 3 == 0 ? CellContent.EMPTY : new CellContent.Text(words(row)),
        row ->
            CellContent.Formula.number(
                "ROUND(" + figure + (row + 1) + "*30,2)",
                ounces(row)
                    .multiply(BigDecimal.valueOf(30))
                    .setScale(2, java.math.RoundingMode.HALF_UP)),
        row ->
            CellContent.Formula.text(
                "IF(" + figure + (row + 1) + ">1,\"heavy & <old>\",\"light\")",
                ounces(row).compareTo(BigDecimal.ONE) > 0 ? "heavy & <old>" : "light"),
        row -> new CellContent.Text(row % 2 == 0 ? "=1+1" : "@-+\"quoted\" <b> & ]]> 'x'"));
  }

  private static BigDecimal ounces(int row) {
    return new BigDecimal("0.0723400000000017").multiply(BigDecimal.valueOf(row % 50 + 1L));
  }

  private static String words(int row) {
    return switch (row % 5) {
      case 1 -> " outer blanks ";
      case 2 -> "line\nbreak\tand tab";
      case 4 -> "_x000D_ stays text";
      default -> "valued, coin " + row;
    };
  }

  private List<NamedCell> names() {
    List<NamedCell> names = new ArrayList<>();
    String quoted = "'" + sheet.replace("'", "''") + "'!$";
    for (int i = 0; i < COLUMNS; i++) {
      String place = CellPlace.letters(firstColumn + i) + "$" + (headerRow + 1);
      names.add(new NamedCell("Fineweight_test_" + i, quoted + place, true));
    }
    return names;
  }

  private SheetDraft draft() {
    List<List<DraftCell>> rows = new ArrayList<>();
    rows.add(List.of(DraftCell.text("Summary", SheetDraft.Kind.TITLE)));
    rows.add(null);
    List<DraftCell> line = new ArrayList<>();
    line.add(DraftCell.text("Total & more", SheetDraft.Kind.TOTAL));
    line.add(null);
    line.add(
        DraftCell.of(
            CellContent.Formula.number("SUM(D2:D3)", BigDecimal.ZERO), CellLook.number("0.00")));
    rows.add(line);
    return new SheetDraft(
        OWN_SHEET, false, rows, Map.of(0, 24.0), 1, Map.of("B3:B4", "\"yes,no\""));
  }
}
