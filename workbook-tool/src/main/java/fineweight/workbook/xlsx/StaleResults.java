package fineweight.workbook.xlsx;

import fineweight.workbook.CellPlace;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.formula.FormulaIndex;
import fineweight.workbook.xlsx.formula.Vocabulary;
import fineweight.workbook.xlsx.part.TablePart;
import fineweight.workbook.xlsx.sheet.CellSet;
import fineweight.workbook.xlsx.splice.ColumnTarget;
import fineweight.workbook.xlsx.xml.Element;
import java.io.IOException;
import java.io.InputStream;
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
  private final List<CellSet> changed = new ArrayList<>();
  private final FormulaIndex index;
  private final List<OpenedSheet> seen = new ArrayList<>();

  StaleResults(OpenedPackage source, EditRun run) {
    this.source = source;
    this.run = run;
    vocabulary();
    index = new FormulaIndex(vocabulary);
  }

  /** Looks at a sheet's formulas while it is walked over; null if there is nothing to look at. */
  FormulaIndex.Sheet seen(OpenedSheet sheet) {
    if (!mayBeStale(sheet)) {
      return null;
    }
    seen.add(sheet);
    List<ColumnTarget> targets = run.targets(sheet);
    return index.seen(sheet.name(), (row, column) -> ours(targets, row, column));
  }

  private boolean mayBeStale(OpenedSheet sheet) {
    boolean drafted = run.drafts().stream().anyMatch(d -> sheet.equals(d.old()));
    return sheet.facts().formulas() > 0 && !drafted && !run.goneSheets().contains(sheet);
  }

  void drop() throws IOException, WorkbookRefusal {
    if (source.sheets().stream().noneMatch(s -> s.facts().formulas() > 0) || !anythingChanged()) {
      return;
    }
    readOthers();
    for (OpenedSheet gone : run.goneSheets()) {
      refuseUsers(gone);
    }
    List<CellSet> stale = index.stale(changed, run.workbook().changedNames());
    for (int i = 0; i < source.sheets().size(); i++) {
      if (!stale.get(i).isEmpty()) {
        run.runOf(source.sheets().get(i)).drop(stale.get(i));
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
    for (int i = 0; i < vocabulary.sheetCount(); i++) {
      changed.add(new CellSet());
    }
  }

  private boolean anythingChanged() {
    boolean any = !run.workbook().changedNames().isEmpty() || !run.goneSheets().isEmpty();
    for (SheetRun each : run.sheets()) {
      any |= take(each.sheet().name(), each.analysed().changed());
    }
    for (DraftRun each : run.drafts()) {
      any |= take(each.draft().name(), each.changed());
    }
    return any;
  }

  private boolean take(String sheet, CellSet cells) {
    CellSet all = changed.get(vocabulary.addSheet(sheet));
    cells.forEach(all::add);
    return !cells.isEmpty();
  }

  private void readOthers() throws IOException, WorkbookRefusal {
    for (OpenedSheet sheet : source.sheets()) {
      if (mayBeStale(sheet) && !seen.contains(sheet)) {
        try (InputStream in = source.zip().xml(sheet.entry().part())) {
          index.read(sheet.name(), sheet.entry().part(), in, (row, column) -> false);
        }
      }
    }
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
