package fineweight.workbook.xlsx.splice;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.WorkbookEdit.ColumnPlace;
import fineweight.workbook.xlsx.part.CellRef;
import java.util.function.IntFunction;

/**
 * One column to fill or to take out.
 *
 * @param header null leaves the header cell alone
 * @param cells null if the column shall be taken out from its header row down
 * @param model the row above, if rows are put under a list; else null
 */
public record ColumnTarget(
    int column,
    int headerRow,
    String header,
    int firstRow,
    int lastRow,
    CellLook look,
    double width,
    IntFunction<CellContent> cells,
    Model model) {

  /**
   * The last row of a list that rows are put under.
   *
   * @param row from 0
   * @param style the number of its cell's format
   */
  public record Model(int row, int style) {}

  /** A column of rows put under a list. */
  public static ColumnTarget under(
      RowsEdit edit, int column, int style, IntFunction<CellContent> cells) {
    return new ColumnTarget(
        column,
        edit.lastRow(),
        null,
        edit.firstWritten(),
        edit.newLastRow(),
        CellLook.GENERAL,
        0,
        cells,
        new Model(edit.lastRow(), style));
  }

  /**
   * @param cells the column's own function, failures marked
   */
  public static ColumnTarget fill(
      SheetEdit sheet, ColumnEdit column, IntFunction<CellContent> cells) {
    return new ColumnTarget(
        column.column(),
        sheet.headerRow(),
        column.header(),
        sheet.firstRow(),
        sheet.lastRow(),
        column.look() == null ? CellLook.GENERAL : column.look(),
        column.width(),
        cells,
        null);
  }

  public static ColumnTarget remove(ColumnPlace place) {
    return new ColumnTarget(
        place.column(),
        place.headerRow(),
        null,
        place.headerRow(),
        CellRef.ROWS - 1,
        CellLook.GENERAL,
        0,
        null,
        null);
  }

  public boolean removes() {
    return cells == null;
  }

  /** Null if the cell shall stay as it is. */
  Wish wish(int row) {
    if (removes()) {
      return row >= headerRow ? Wish.GONE : null;
    }
    if (row == headerRow && model == null) {
      return header == null ? null : Wish.of(new CellContent.Text(header), null);
    }
    if (row < firstRow || row > lastRow) {
      return null;
    }
    CellContent content = cells.apply(row);
    if (content == null) {
      return null;
    }
    return model == null ? Wish.of(content, look) : Wish.of(content, look).styled(model.style());
  }

  /** What the cell shall hold; null if it stays as it is, empty if it goes. */
  public CellContent contentAt(int row) {
    Wish wish = wish(row);
    return wish == null ? null : wish.content() == null ? CellContent.EMPTY : wish.content();
  }

  /** Whether the cell is one of those that the edit speaks of. */
  public boolean covers(int row) {
    boolean inside = row == headerRow || row >= firstRow && row <= lastRow;
    return model == null ? inside : inside && cells.apply(row) != null;
  }
}
