package fineweight.refresh.worth;

import fineweight.column.Headings;
import fineweight.column.InputColumn;
import fineweight.column.RowText;
import fineweight.refresh.inventory.CellTexts;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.RowMoney;
import fineweight.workbook.Cell;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What lots cost, where it is written outside the inventory: on a sheet of their owner's with
 * headings for the lot and the cost, and in the framed cells of our sheet of lots. Immutable.
 *
 * @param typed the figures in our sheet, by lot
 * @param all those and the ones of the owner's sheet; what is typed in ours counts before
 */
public record LotCosts(Map<String, BigDecimal> typed, Map<String, BigDecimal> all) {
  private static final int LAST_HEADING_ROW = 20;

  public LotCosts {
    typed = Map.copyOf(typed);
    all = Map.copyOf(all);
  }

  /**
   * @param inventory the name of the inventory's sheet, which is not looked at
   * @param firstRow the first line of a lot in our sheet, from 0
   * @param column the column of the framed cells in our sheet, from 0
   */
  public static LotCosts read(
      Workbook workbook, OurMarks marks, String inventory, int firstRow, int column)
      throws WorkbookRefusal {
    Map<String, BigDecimal> typed = new LinkedHashMap<>();
    String ours = marks.sheets().get("lots");
    if (ours != null) {
      int[] next = {firstRow};
      workbook.read(
          ours,
          place -> true,
          Integer.MAX_VALUE,
          cells -> {
            RowText row = CellTexts.row(cells);
            // The lines of the lots end at the first blank one.
            if (row.row() == next[0] && !row.cells().isEmpty()) {
              next[0]++;
              typed(row, column, typed);
            }
          });
    }
    Map<String, BigDecimal> all = new LinkedHashMap<>();
    for (SheetSummary sheet : workbook.sheets()) {
      if (sheet.isTable() && !marks.isOurs(sheet.name()) && !sheet.name().equals(inventory)) {
        new OwnSheet().read(workbook, sheet.name()).forEach(all::putIfAbsent);
      }
    }
    all.putAll(typed);
    return new LotCosts(typed, all);
  }

  private static void typed(RowText row, int column, Map<String, BigDecimal> typed) {
    cost(row.at(column)).ifPresent(cost -> typed.putIfAbsent(row.at(0).strip(), cost));
  }

  private static Optional<BigDecimal> cost(String text) {
    return text.isBlank()
        ? Optional.empty()
        : RowMoney.amount(text).filter(figure -> figure.signum() >= 0);
  }

  /** A sheet that may be a list of lots. */
  private static final class OwnSheet {
    private final Map<String, BigDecimal> costs = new LinkedHashMap<>();
    private final Map<InputColumn, Integer> places = new HashMap<>();
    private boolean repeats;

    /** Nothing if a lot stands in it twice: then it is a list of pieces. */
    Map<String, BigDecimal> read(Workbook workbook, String sheet) throws WorkbookRefusal {
      workbook.read(
          sheet, column -> true, LAST_HEADING_ROW, cells -> headings(CellTexts.row(cells)));
      if (!places.keySet().containsAll(List.of(InputColumn.LOT, InputColumn.COST))) {
        return Map.of();
      }
      workbook.read(sheet, places::containsValue, Integer.MAX_VALUE, this::typedLot);
      return repeats ? Map.of() : costs;
    }

    /** A formula, such as a sum over the inventory's own rows, is no price of a lot. */
    private void typedLot(List<Cell> cells) {
      List<Cell> typed = cells.stream().filter(cell -> cell.formula().isEmpty()).toList();
      if (!typed.isEmpty()) {
        lot(CellTexts.row(typed));
      }
    }

    private void lot(RowText row) {
      String lot = row.at(places.get(InputColumn.LOT)).strip();
      Optional<BigDecimal> cost = cost(row.at(places.get(InputColumn.COST)));
      if (!lot.isEmpty() && cost.isPresent()) {
        repeats |= costs.put(lot, cost.get()) != null;
      }
    }

    private void headings(RowText row) {
      Map<InputColumn, Integer> found = new HashMap<>();
      row.cells()
          .forEach(
              (place, words) ->
                  Headings.standard()
                      .match(words)
                      .filter(Headings.Match::exact)
                      .ifPresent(match -> found.putIfAbsent(match.column(), place)));
      boolean list = found.containsKey(InputColumn.LOT) && found.containsKey(InputColumn.COST);
      if (places.isEmpty() && list) {
        places.put(InputColumn.LOT, found.get(InputColumn.LOT));
        places.put(InputColumn.COST, found.get(InputColumn.COST));
      }
    }
  }
}
