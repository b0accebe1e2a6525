package fineweight.refresh;

import fineweight.column.InputColumn;
import fineweight.refresh.collection.ByPlace;
import fineweight.refresh.collection.ForSale;
import fineweight.refresh.collection.Gains;
import fineweight.refresh.collection.TypeSetReview;
import fineweight.refresh.inventory.Inventory;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.PieceNumbers;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.inventory.RowReader;
import fineweight.refresh.sheet.LotsSheet;
import fineweight.refresh.worth.LotCosts;
import fineweight.refresh.worth.Lots;
import fineweight.refresh.worth.Spot;
import fineweight.refresh.worth.Totals;
import fineweight.refresh.worth.Worths;
import fineweight.typeset.TypeSet;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.util.List;
import java.util.Optional;

/**
 * Everything that a run works out from a workbook before it says what shall stand in it. Immutable
 * once made.
 *
 * @param held the rows with the pieces that are still in the collection
 * @param totals sums over those
 * @param set the type set reviewed; empty if none is wanted
 * @param forSale what is marked or proposed for sale
 * @param gains of pieces that are gone
 */
record Reckoning(
    Workbook workbook,
    OurMarks marks,
    Inventory inventory,
    RowReader reader,
    PieceNumbers numbers,
    Worths worths,
    List<ReadRow> held,
    Totals totals,
    LotCosts lotCosts,
    Lots lots,
    Optional<TypeSetReview> set,
    ForSale forSale,
    Gains gains,
    RefreshWishes.Further further) {
  static Reckoning of(
      Workbook workbook,
      OurMarks marks,
      Inventory inventory,
      RowReader reader,
      Worths worths,
      Optional<TypeSet> typeSet,
      RefreshWishes wishes)
      throws WorkbookRefusal {
    PieceNumbers numbers = PieceNumbers.of(reader);
    List<ReadRow> held = held(reader);
    Totals totals = new Totals(worths);
    held.forEach(totals::add);
    LotCosts costs =
        LotCosts.read(workbook, marks, inventory.sheet(), LotsSheet.FIRST_ROW, LotsSheet.OWN_COST);
    Optional<TypeSetReview> set =
        typeSet.map(
            places ->
                new TypeSetReview(
                    places, held, numbers, inventory.table().first(InputColumn.MINT).isPresent()));
    Lots lots = Lots.of(reader.rows(), worths, costs.all());
    return new Reckoning(
        workbook,
        marks,
        inventory,
        reader,
        numbers,
        worths,
        held,
        totals,
        costs,
        lots,
        set,
        new ForSale(held, set, lots, worths, numbers, wishes.further().selling()),
        new Gains(reader.rows(), lots, numbers, worths.currency()),
        wishes.further());
  }

  private static List<ReadRow> held(RowReader reader) {
    return reader.rows().stream()
        .filter(ReadRow::isCoin)
        .flatMap(row -> row.held().stream())
        .toList();
  }

  ByPlace byPlace() {
    return new ByPlace(held, lots, worths, numbers);
  }

  Spot spot() {
    return worths.spot();
  }
}
