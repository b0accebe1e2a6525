package fineweight.workbook.xlsx.splice;

import fineweight.workbook.CellChange;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.formula.FormulaIndex;
import fineweight.workbook.xlsx.sheet.CellReading;
import fineweight.workbook.xlsx.sheet.CellSet;
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
 * @param reading knows the formats and texts; new formats are added to its styles
 */
public record SheetPlan(
    String sheet, String part, SheetFacts facts, List<ColumnTarget> targets, CellReading reading) {
  public SheetPlan {
    targets = targets.stream().sorted(Comparator.comparingInt(ColumnTarget::column)).toList();
  }

  /**
   * Goes over the sheet and writes nothing: what would change by the columns alone?
   *
   * @param formulas sees every cell; null for none
   */
  public Outcome analyse(InputStream raw, FormulaIndex.Sheet formulas)
      throws IOException, WorkbookRefusal {
    OutputStream none = OutputStream.nullOutputStream();
    Outcome outcome = run(raw, none, new CellSet(), Frame.UNCHANGED, null, formulas, true);
    if (formulas != null) {
      formulas.finish();
    }
    return outcome;
  }

  /**
   * Writes the changed sheet.
   *
   * @param analysed what {@link #analyse} has found
   * @param dropped formula cells whose stored result goes
   * @param changes null if nobody listens
   */
  public Outcome write(
      InputStream raw,
      OutputStream out,
      Outcome analysed,
      CellSet dropped,
      Consumer<CellChange> changes)
      throws IOException, WorkbookRefusal {
    return run(raw, out, dropped, Frame.of(targets, facts, analysed), changes, null, false);
  }

  private Outcome run(
      InputStream raw,
      OutputStream out,
      CellSet dropped,
      Frame frame,
      Consumer<CellChange> changes,
      FormulaIndex.Sheet formulas,
      boolean analyses)
      throws IOException, WorkbookRefusal {
    CutStream cut = new CutStream(PlainUtf8.of(raw));
    Outcome outcome = new Outcome();
    Cutting cutting = new Cutting(cut, out, !analyses);
    RowSplice rows = new RowSplice(this, cutting, dropped, changes, outcome);
    SheetWalk.walk(sheet, part, cut, new SheetSplice(rows, cutting, frame, formulas));
    rows.finish();
    cut.copyRest(out);
    return outcome;
  }

  /** Whether the content of a column's cells must be looked at. */
  boolean concerns(int column) {
    return facts.formulas() > 0 || fills(column);
  }

  /** Whether the column is one of ours. */
  boolean fills(int column) {
    for (ColumnTarget target : targets) {
      if (target.column() == column) {
        return true;
      }
    }
    return false;
  }
}
