package fineweight.refresh;

import fineweight.column.Appraisal;
import fineweight.column.InputColumn;
import fineweight.column.MeltFormula;
import fineweight.column.RowState;
import fineweight.refresh.collection.SaleLine;
import fineweight.refresh.inventory.Inventory;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.inventory.RowReader;
import fineweight.refresh.worth.Spot;
import fineweight.refresh.worth.Totals;
import fineweight.workbook.CellPlace;
import fineweight.workbook.Workbook;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Puts together what a run has to say. */
final class Reporting {
  private final Workbook workbook;
  private final Inventory inventory;
  private final RowReader reader;
  private final Spot spot;
  private final MeltFormula melt;
  private final Totals totals;
  private final List<ReadRow> held;
  private final RefreshReport.Selling selling;
  private final List<String> ownRemarks;
  private final Set<CellPlace> left;

  /**
   * @param left cells that call our functions and could not be calculated
   */
  Reporting(Reckoning reckoning, Set<CellPlace> left) {
    this.left = left;
    this.workbook = reckoning.workbook();
    this.inventory = reckoning.inventory();
    this.reader = reckoning.reader();
    this.spot = reckoning.spot();
    this.melt = reckoning.worths().melt();
    this.totals = reckoning.totals();
    this.held = reckoning.held();
    this.ownRemarks = reckoning.worths().own().remarks();
    this.selling =
        new RefreshReport.Selling(
            reckoning.forSale().offers().stream().map(SaleLine::of).toList(),
            reckoning.gains(),
            reckoning.byPlace());
  }

  RefreshReport report(long changedCells, Optional<Path> backup) {
    List<RefreshReport.OpenRow> open = new ArrayList<>();
    for (ReadRow row : held) {
      RowState state = row.appraisal().state();
      if (state == RowState.SEVERAL || state == RowState.NOT_KNOWN) {
        open.add(openRow(row));
      }
    }
    open.sort(Comparator.comparing(RefreshReport.OpenRow::atStake).reversed());
    List<String> bad = new ArrayList<>(ownRemarks);
    reader
        .badCells()
        .forEach(
            cell -> bad.add(workbook.path() + ", " + cell.place() + ": " + cell.sentence() + "."));
    return new RefreshReport(
        understood(),
        figures(),
        List.copyOf(open),
        bad,
        notCalculated(),
        changedCells,
        backup,
        selling);
  }

  private List<String> notCalculated() {
    return left.stream()
        .map(
            place ->
                workbook.path()
                    + ", "
                    + place
                    + ": the formula calls one of the FINEWEIGHT functions, but something else in it, or in a cell it looks at, is not calculated here, so its result stays as it was; open the file in an office with the add-in and calculate there.")
        .toList();
  }

  private RefreshReport.Understood understood() {
    Map<String, String> columns = new LinkedHashMap<>();
    List<String> unused = new ArrayList<>();
    inventory
        .table()
        .headings()
        .forEach(
            (place, words) -> {
              InputColumn column = inventory.table().columns().get(place);
              boolean used = column != null && column != InputColumn.OTHER;
              if (inventory.ours().containsValue(place)) {
                return;
              }
              if (used) {
                columns.put(words, column.words());
              } else {
                unused.add(words);
              }
            });
    return new RefreshReport.Understood(
        workbook.path(),
        inventory.sheet(),
        inventory.table().headerRow() + 1,
        columns,
        unused,
        inventory.others());
  }

  private RefreshReport.Figures figures() {
    Map<String, Integer> states = new LinkedHashMap<>();
    for (RowState state : RowState.values()) {
      states.put(state.label(), totals.count(state));
    }
    return new RefreshReport.Figures(
        totals.rows(),
        totals.pieces(),
        states,
        totals.content(),
        spot.prices().currency().getCode(),
        spot.prices().date(),
        new RefreshReport.Money(totals.least(), totals.most(), totals.fromMemory()),
        spot.fromWorkbook(),
        totals.withoutPrice());
  }

  private RefreshReport.OpenRow openRow(ReadRow row) {
    Appraisal appraisal = row.appraisal();
    BigDecimal low = melt.result(appraisal.content()).orElse(BigDecimal.ZERO);
    BigDecimal high = melt.result(appraisal.mostContent()).orElse(low);
    String words = row.words();
    String place =
        new CellPlace(inventory.sheet(), row.row(), 0)
            .toString()
            .replaceAll("!A(\\d+)$", ", row $1")
            .replaceAll("^A(\\d+)$", "row $1");
    String note = appraisal.notes().isEmpty() ? "" : appraisal.notes().get(0);
    return new RefreshReport.OpenRow(place, words, note, high.subtract(low));
  }
}
