package fineweight.giveaway;

import fineweight.refresh.inventory.CellTexts;
import fineweight.refresh.inventory.Inventory;
import fineweight.workbook.Cell;
import fineweight.workbook.CellValue;
import fineweight.workbook.SheetLayout;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Chooses the cells whose content stays: headings, the words beside a total, words of the trade in
 * the areas behind drop-downs, and the sheets that the owner named.
 */
final class CellChoice {
  private static final String TOTAL =
      "(?i)(grand |sub-?)?(totals?|sum|summe|gesamt|totaal|totale|suma|average|count)\\W{0,2}";

  private static final int LONGEST_UPPER_LINE = 30;

  private final Workbook workbook;
  private final Inventory inventory;
  private final KeptWords words;
  private final Wishes wishes;
  private final Findings findings;

  CellChoice(
      Workbook workbook, Inventory inventory, KeptWords words, Wishes wishes, Findings findings) {
    this.workbook = workbook;
    this.inventory = inventory;
    this.words = words;
    this.wishes = wishes;
    this.findings = findings;
  }

  /**
   * @param lists areas that drop-downs take their words from
   */
  KeptCells of(String sheet, List<SheetLayout.Area> lists) throws WorkbookRefusal {
    KeptCells kept = new KeptCells();
    List<SheetLayout.Area> headers = new ArrayList<>();
    for (SheetLayout.Table table : workbook.layout(sheet).tables()) {
      if (table.headerRows() > 0) {
        SheetLayout.Area area = table.area();
        headers.add(
            new SheetLayout.Area(
                area.firstRow(), area.firstColumn(), area.firstRow(), area.lastColumn()));
      }
    }
    boolean whole = isWhole(sheet);
    workbook.read(
        sheet,
        column -> true,
        Integer.MAX_VALUE,
        cells -> cells.forEach(cell -> choose(cell, whole, headers, lists, kept)));
    return kept;
  }

  private boolean isWhole(String sheet) {
    return wishes.sheets().stream().anyMatch(sheet::equalsIgnoreCase);
  }

  private void choose(
      Cell cell,
      boolean whole,
      List<SheetLayout.Area> headers,
      List<SheetLayout.Area> lists,
      KeptCells kept) {
    boolean number = cell.value() instanceof CellValue.Number;
    boolean text = cell.value() instanceof CellValue.Text;
    if (cell.formula().isPresent() || !(number || text)) {
      return;
    }
    String words = CellTexts.text(cell.value());
    int row = cell.place().row();
    int column = cell.place().column();
    boolean heading = isHeading(cell) || (text && holds(headers, row, column));
    if (heading && !this.words.knows(words)) {
      findings.left("heading that is not of the trade", words);
    }
    boolean stays =
        whole
            || heading
            || isUpperLine(cell, words)
            || (text && words.matches(TOTAL))
            || (holds(lists, row, column) && this.words.knows(words));
    if (stays) {
      kept.keep(row, column, words, number);
    }
  }

  private boolean isHeading(Cell cell) {
    return cell.place().sheet().equals(inventory.sheet())
        && cell.place().row() == inventory.table().headerRow();
  }

  /** A heading may stand in two lines; a title above it is the owner's. */
  private boolean isUpperLine(Cell cell, String text) {
    return cell.place().sheet().equals(inventory.sheet())
        && cell.place().row() == inventory.table().headerRow() - 1
        && text.length() <= LONGEST_UPPER_LINE
        && words.knows(text);
  }

  private static boolean holds(List<SheetLayout.Area> areas, int row, int column) {
    return areas.stream()
        .anyMatch(
            area ->
                row >= area.firstRow()
                    && row <= area.lastRow()
                    && column >= area.firstColumn()
                    && column <= area.lastColumn());
  }

  /** Whether two names of sheets are the same to a spreadsheet program. */
  static boolean same(String sheet, String other) {
    return sheet.toLowerCase(Locale.ROOT).equals(other.toLowerCase(Locale.ROOT));
  }
}
