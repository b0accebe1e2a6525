package fineweight.workbook.xlsx;

import fineweight.workbook.CellPlace;
import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.formula.FormulaIndex;
import fineweight.workbook.xlsx.formula.Vocabulary;
import fineweight.workbook.xlsx.part.TablePart;
import fineweight.workbook.xlsx.sheet.CellSet;
import fineweight.workbook.xlsx.splice.ColumnTarget;
import fineweight.workbook.xlsx.xml.Element;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the owner's formulas whose stored result is no longer true. The result is taken out, so
 * that no program shows an old figure; each calculates it when it opens the file.
 */
final class StaleResults {
  private final OpenedPackage source;
  private final EditRun run;
  private final Vocabulary vocabulary = new Vocabulary();
  private final FormulaIndex index;

  StaleResults(OpenedPackage source, EditRun run) {
    this.source = source;
    this.run = run;
    vocabulary();
    index = new FormulaIndex(vocabulary);
    for (OpenedSheet sheet : source.sheets()) {
      boolean drafted = run.drafts().stream().anyMatch(d -> sheet.equals(d.old()));
      if (sheet.facts().formulas() > 0 && !drafted && !run.goneSheets().contains(sheet)) {
        List<ColumnTarget> targets = run.targets(sheet);
        index.add(sheet.name(), sheet.formulas(), (row, column) -> ours(targets, row, column));
      }
    }
  }

  /** Whether any result could be stale, whatever the edit turns out to change. */
  boolean mayBe() {
    List<CellSet> touched = noCells();
    for (OpenedSheet sheet : source.sheets()) {
      CellSet all = touched.get(vocabulary.addSheet(sheet.name()));
      for (ColumnTarget each : run.targets(sheet)) {
        int last = Math.min(each.lastRow(), Math.max(sheet.facts().lastRow(), each.headerRow()));
        int bottom = each.removes() ? last : each.lastRow();
        all.addAll(new Area(each.headerRow(), each.column(), each.headerRow(), each.column()));
        all.addAll(new Area(each.firstRow(), each.column(), bottom, each.column()));
      }
    }
    takeDrafts(touched);
    return stale(touched).stream().anyMatch(s -> !s.isEmpty());
  }

  private List<CellSet> stale(List<CellSet> changed) {
    return index.stale(changed, run.workbook().changedNames());
  }

  private List<CellSet> noCells() {
    List<CellSet> cells = new ArrayList<>();
    for (int i = 0; i < vocabulary.sheetCount(); i++) {
      cells.add(new CellSet());
    }
    return cells;
  }

  private void takeDrafts(List<CellSet> changed) {
    for (DraftRun each : run.drafts()) {
      take(changed, each.draft().name(), each.changed());
    }
  }

  private void take(List<CellSet> changed, String sheet, CellSet cells) {
    CellSet all = changed.get(vocabulary.addSheet(sheet));
    cells.forEach(all::add);
  }

  /** Needs to know all that the edit changes, unless nothing {@link #mayBe} stale. */
  void drop() throws IOException, WorkbookRefusal {
    for (OpenedSheet gone : run.goneSheets()) {
      refuseUsers(gone);
    }
    List<CellSet> changed = noCells();
    for (SheetRun each : run.sheets()) {
      take(changed, each.sheet().name(), each.analysed().changed());
    }
    takeDrafts(changed);
    CalledResults called = new CalledResults(source, run, index);
    if (called.areAny()) {
      List<CellSet> reach = CellSet.copies(changed);
      called.addTo(reach);
      stale(reach);
      called.calculate(reach, changed);
    }
    List<CellSet> stale = stale(changed);
    for (int i = 0; i < source.sheets().size(); i++) {
      CellSet gone = called.without(i, stale.get(i));
      if (!gone.isEmpty()) {
        run.runOf(source.sheets().get(i)).results().drop(gone);
      }
    }
  }

  private void vocabulary() {
    for (OpenedSheet sheet : source.sheets()) {
      int number = vocabulary.addSheet(sheet.name());
      for (TablePart table : run.tables(sheet)) {
        vocabulary.addTable(number, table);
      }
    }
    run.drafts().forEach(d -> vocabulary.addSheet(d.draft().name()));
    for (Element name : source.workbook().definedNames()) {
      if (name.get("name") != null) {
        vocabulary.addName(name.number("localSheetId", -1), name.get("name"), name.text());
      }
    }
    run.edit().names().forEach(n -> vocabulary.addName(-1, n.name(), n.refersTo()));
  }

  private static boolean ours(List<ColumnTarget> targets, int row, int column) {
    for (ColumnTarget target : targets) {
      if (target.column() == column && target.covers(row)) {
        return true;
      }
    }
    return false;
  }

  private void refuseUsers(OpenedSheet gone) throws WorkbookRefusal {
    Optional<CellPlace> user = index.userOf(vocabulary.addSheet(gone.name()));
    if (user.isPresent()) {
      throw new WorkbookRefusal(
          WorkbookRefusal.Kind.NO_ROOM,
          "The sheet \"%s\" cannot be taken out because the formula in %s looks at it; change that formula first."
              .formatted(gone.name(), user.get()));
    }
  }
}
