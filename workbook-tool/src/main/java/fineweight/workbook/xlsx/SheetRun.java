package fineweight.workbook.xlsx;

import fineweight.workbook.CellChange;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.splice.Outcome;
import fineweight.workbook.xlsx.splice.OwnersResults;
import fineweight.workbook.xlsx.splice.SheetPlan;
import fineweight.workbook.xlsx.splice.WishTrail;
import fineweight.workbook.xlsx.zip.PackageZip;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.function.Consumer;

/** One sheet of the owner's in one edit: looked at first, written afterwards. */
final class SheetRun {
  private final PackageZip zip;
  private final OpenedSheet sheet;
  private final SheetPlan plan;
  private final Outcome analysed;
  private final OwnersResults results = new OwnersResults();

  /**
   * @param whether whether it is enough to know if anything changes
   */
  SheetRun(PackageZip zip, OpenedSheet sheet, SheetPlan plan, boolean whether)
      throws IOException, WorkbookRefusal {
    this.zip = zip;
    this.sheet = sheet;
    this.plan = plan;
    try (InputStream in = zip.xml(sheet.entry().part())) {
      analysed = plan.analyse(in, whether);
    }
  }

  OpenedSheet sheet() {
    return sheet;
  }

  Outcome analysed() {
    return analysed;
  }

  /** What becomes of the stored results of the owner's formulas. */
  OwnersResults results() {
    return results;
  }

  boolean changes() {
    return analysed.touched() || !results.isEmpty();
  }

  /** Tells each change and writes nothing. */
  void preview(Consumer<CellChange> changes) throws IOException, WorkbookRefusal {
    try (InputStream in = zip.xml(sheet.entry().part())) {
      plan.write(in, OutputStream.nullOutputStream(), analysed, results, changes, null);
    }
  }

  /**
   * @param wishes is told what was wished for; null for nobody
   */
  Outcome write(OutputStream out, WishTrail wishes) throws IOException, WorkbookRefusal {
    try (InputStream in = zip.xml(sheet.entry().part())) {
      return plan.write(in, out, analysed, results, null, wishes);
    }
  }

  SheetPlan plan() {
    return plan;
  }
}
