package fineweight.refresh;

import fineweight.refresh.collection.LabelPiece;
import fineweight.refresh.collection.LabelPieces;
import fineweight.refresh.inventory.Progress;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.util.List;

/** What can be said on labels of the pieces in a workbook; nothing in it changes. */
public final class HolderLabels {
  private HolderLabels() {}

  /**
   * @param pricesNeeded whether least prices are wanted, which need spot prices where one cost
   *     stands for several rows
   * @param apart whether what is for sale of a row comes apart from what is kept of it
   * @return every piece that is still in the collection, in the order of the sheet
   */
  public static List<LabelPiece> of(
      Workbook workbook,
      RefreshWishes wishes,
      boolean pricesNeeded,
      boolean apart,
      Progress progress)
      throws WorkbookRefusal, RefreshRefusal {
    Reckoning reckoning = Refresh.reckoning(workbook, wishes, pricesNeeded, progress);
    return new LabelPieces(
            reckoning.forSale(),
            reckoning.lots(),
            reckoning.numbers(),
            reckoning.further().selling())
        .of(reckoning.held(), apart);
  }
}
