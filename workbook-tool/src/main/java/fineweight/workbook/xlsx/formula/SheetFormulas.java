package fineweight.workbook.xlsx.formula;

import fineweight.workbook.xlsx.sheet.CellXml;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The formulas of one sheet, gathered while the sheet is walked over. A formula that is filled down
 * is kept once, so that each cell costs a few numbers.
 */
public final class SheetFormulas {
  /** For a sheet without formulas. */
  public static final SheetFormulas NONE = new SheetFormulas();

  private static final int FIELDS = 4;

  private final List<Shape> shapes = new ArrayList<>();
  private final List<Last> lastByColumn = new ArrayList<>();
  private final Map<Integer, Integer> groups = new HashMap<>();
  private final List<int[]> members = new ArrayList<>();
  private int[] cells = new int[FIELDS * 16];
  private int count;

  /**
   * A formula as one cell has it.
   *
   * @param kind {@code normal}, {@code shared}, {@code array} or {@code dataTable}
   * @param area of an array or a data table; null for none
   * @param firstInput of a data table; null for none
   * @param secondInput of a data table; null for none
   */
  record Shape(
      String kind,
      String text,
      String area,
      String firstInput,
      String secondInput,
      int row,
      int column) {}

  /** The formula that a column had last. */
  private record Last(FilledDown formula, int shape) {}

  /** Takes the formula cells that occur on a sheet. */
  interface Taker {
    /**
     * @param shape by number
     */
    void cell(int row, int column, int shape, boolean stored);
  }

  /** Cells are shown from top to bottom. */
  public void see(CellXml cell) {
    if (!cell.isFormula()) {
      return;
    }
    if (cell.sharedGroup() >= 0 && cell.formulaText().isEmpty()) {
      members.add(
          new int[] {cell.sharedGroup(), cell.row(), cell.column(), cell.hasValue() ? 1 : 0});
      return;
    }
    int shape = shape(cell);
    if (cell.sharedGroup() >= 0) {
      groups.put(cell.sharedGroup(), shape);
    }
    add(cell.row(), cell.column(), shape, cell.hasValue() ? 1 : 0);
  }

  private int shape(CellXml cell) {
    if (!cell.formulaKind().equals("normal") || cell.formulaArea() != null) {
      return newShape(cell);
    }
    while (lastByColumn.size() <= cell.column()) {
      lastByColumn.add(null);
    }
    Last last = lastByColumn.get(cell.column());
    if (last != null && last.formula().matches(cell.formulaText(), cell.row())) {
      return last.shape();
    }
    int shape = newShape(cell);
    lastByColumn.set(cell.column(), new Last(FilledDown.of(cell.formulaText(), cell.row()), shape));
    return shape;
  }

  private int newShape(CellXml cell) {
    String area = cell.sharedGroup() < 0 ? cell.formulaArea() : null;
    shapes.add(
        new Shape(
            cell.formulaKind(),
            cell.formulaText(),
            area,
            cell.firstInput(),
            cell.secondInput(),
            cell.row(),
            cell.column()));
    return shapes.size() - 1;
  }

  private void add(int row, int column, int shape, int stored) {
    int place = count * FIELDS;
    if (place == cells.length) {
      cells = Arrays.copyOf(cells, place * 2);
    }
    cells[place] = row;
    cells[place + 1] = column;
    cells[place + 2] = shape;
    cells[place + 3] = stored;
    count++;
  }

  /** No more cells follow. A member may stand before the cell that holds its text. */
  public void finish() {
    for (int[] member : members) {
      Integer shape = groups.get(member[0]);
      if (shape != null) {
        add(member[1], member[2], shape, member[3]);
      }
    }
    members.clear();
    lastByColumn.clear();
  }

  List<Shape> shapes() {
    return shapes;
  }

  void forEach(Taker taker) {
    for (int i = 0; i < count; i++) {
      int place = i * FIELDS;
      taker.cell(cells[place], cells[place + 1], cells[place + 2], cells[place + 3] == 1);
    }
  }
}
