package fineweight.workbook.xlsx.splice;

import fineweight.workbook.CellChange;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.sheet.CellMap;
import fineweight.workbook.xlsx.sheet.CellReading;
import fineweight.workbook.xlsx.sheet.SheetFacts;
import fineweight.workbook.xlsx.sheet.SheetWalk;
import fineweight.workbook.xlsx.xml.PlainUtf8;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;

/**
 * What shall happen to one sheet.
 *
 * @param targets ascending by column
 * @param map of the sheet as it is
 * @param reading knows the formats and texts; new formats are added to its styles
 */
public record SheetPlan(
    String sheet,
    String part,
    SheetFacts facts,
    CellMap map,
    List<ColumnTarget> targets,
    CellReading reading) {
  public SheetPlan {
    targets = targets.stream().sorted(Comparator.comparingInt(ColumnTarget::column)).toList();
  }

  /**
   * Goes over the sheet and writes nothing: what would change by the columns alone?
   *
   * @param whether whether it is enough to know if anything changes
   */
  public Outcome analyse(InputStream raw, boolean whether) throws IOException, WorkbookRefusal {
    CutStream cut = new CutStream(PlainUtf8.of(raw));
    Outcome outcome = new Outcome(true);
    Cutting cutting = new Cutting(cut, OutputStream.nullOutputStream(), false);
    RowSplice rows =
        new RowSplice(this, cutting, new OwnersResults(), null, outcome, RowWishes.of(targets));
    analyse(cut, cutting, rows, whether, outcome);
    return outcome;
  }

  private void analyse(
      CutStream cut, Cutting cutting, RowSplice rows, boolean whether, Outcome outcome)
      throws IOException, WorkbookRefusal {
    walk(cut, rows, new SheetSplice(rows, cutting, Frame.UNCHANGED, whether));
    outcome.partial = whether && outcome.touched;
    if (!outcome.partial) {
      rows.finish();
    }
  }

  /**
   * Whether a sheet holds what was wished for when it was written.
   *
   * @param reading one of its own, for the formats and texts as they were
   * @param wishes what {@link #write} tells, perhaps at the same time
   */
  public boolean isIn(InputStream written, CellReading reading, WishTrail wishes)
      throws IOException, WorkbookRefusal {
    SheetPlan again =
        new SheetPlan(sheet, part, facts.withoutFormulas(), CellMap.NONE, targets, reading);
    CutStream cut = new CutStream(PlainUtf8.of(written));
    Outcome outcome = new Outcome(false);
    Cutting cutting = new Cutting(cut, OutputStream.nullOutputStream(), false);
    RowSplice rows =
        new RowSplice(again, cutting, new OwnersResults(), null, outcome, wishes::take);
    again.analyse(cut, cutting, rows, true, outcome);
    return !outcome.touched && wishes.wereMet();
  }

  /**
   * Writes the changed sheet.
   *
   * @param analysed what {@link #analyse} has found
   * @param results what becomes of the results of the owner's formulas
   * @param changes null if nobody listens
   * @param wishes is told what each row shall be, before the row is written; null for nobody
   */
  public Outcome write(
      InputStream raw,
      OutputStream out,
      Outcome analysed,
      OwnersResults results,
      Consumer<CellChange> changes,
      WishTrail wishes)
      throws IOException, WorkbookRefusal {
    Frame frame = Frame.of(targets, facts, analysed);
    CutStream cut = new CutStream(PlainUtf8.of(raw));
    Outcome outcome = new Outcome(false);
    Cutting cutting = new Cutting(cut, out, true);
    RowWishes asked = RowWishes.of(targets);
    RowSplice rows =
        new RowSplice(
            this,
            cutting,
            results,
            changes,
            outcome,
            wishes == null ? asked : wishes.telling(asked));
    walk(cut, rows, new SheetSplice(rows, cutting, frame, false));
    rows.finish();
    cut.copyRest(out);
    return outcome;
  }

  /** The map tells too little of cells that are not ours where these matter. */
  private void walk(CutStream cut, RowSplice rows, SheetSplice splice)
      throws IOException, WorkbookRefusal {
    SheetWalk.walk(sheet, part, cut, splice, rows.seesAll() ? CellMap.NONE : map);
  }
}
