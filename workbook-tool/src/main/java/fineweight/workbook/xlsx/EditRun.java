package fineweight.workbook.xlsx;

import fineweight.workbook.CellChange;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.NamedCell;
import fineweight.workbook.Recalculation;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.SheetSummary.Visibility;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookEdit.ColumnPlace;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.chart.DraftedCells;
import fineweight.workbook.xlsx.draft.WholeSheet;
import fineweight.workbook.xlsx.part.TablePart;
import fineweight.workbook.xlsx.part.WorkbookEdits;
import fineweight.workbook.xlsx.sheet.CellReading;
import fineweight.workbook.xlsx.sheet.CellSet;
import fineweight.workbook.xlsx.splice.ColumnTarget;
import fineweight.workbook.xlsx.splice.SheetPlan;
import fineweight.workbook.xlsx.style.Styles;
import fineweight.workbook.xlsx.zip.PackageZip;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/** One edit of one package, thought through before anything is written. */
final class EditRun {
  private final OpenedPackage source;
  private final WorkbookEdit edit;
  private final Styles styles;
  private final CellReading reading;
  private final WorkbookEdits workbook;
  private final Map<String, List<ColumnTarget>> targets = new LinkedHashMap<>();
  private final List<SheetRun> sheets = new ArrayList<>();
  private final List<DraftRun> drafts = new ArrayList<>();
  private final List<OpenedSheet> goneSheets = new ArrayList<>();
  private final Map<String, AddedRows> rows = new LinkedHashMap<>();
  private Assembly assembly;

  EditRun(OpenedPackage source, WorkbookEdit edit) throws IOException, WorkbookRefusal {
    this(source, edit, Set.of());
  }

  /**
   * @param settled names of sheets in which the edit is known to change nothing
   */
  private EditRun(OpenedPackage source, WorkbookEdit edit, Set<String> settled)
      throws IOException, WorkbookRefusal {
    this.source = source;
    this.edit = edit;
    styles = source.newStyles();
    reading = source.newReading(styles);
    workbook = new WorkbookEdits(source.workbook());
    edit.names().forEach(workbook::putName);
    for (String name : edit.removals().names()) {
      if (edit.names().stream().map(NamedCell::name).noneMatch(name::equalsIgnoreCase)) {
        workbook.removeName(name);
      }
    }
    for (String name : edit.removals().sheets()) {
      source.sheet(name).ifPresent(goneSheets::add);
    }
    refuseNothingToSee(edit);
    DraftedCells drafted = new DraftedCells(edit.drafts());
    for (SheetDraft draft : edit.drafts()) {
      drafts.add(new DraftRun(source, draft, reading, drafted));
    }
    fill(edit);
    for (RowsEdit each : edit.rows()) {
      AddedRows added = AddedRows.of(source, sheet(each.sheet()), reading, each);
      rows.put(added.sheet().name(), added);
      added.targets().forEach(t -> target(added.sheet(), t));
    }
    StaleResults stale = new StaleResults(source, this);
    boolean whether = !removesColumns() && !stale.mayBe();
    for (Map.Entry<String, List<ColumnTarget>> each : targets.entrySet()) {
      OpenedSheet sheet = source.sheet(each.getKey()).orElseThrow();
      if (!rows.containsKey(sheet.name())) {
        TargetRules.check(sheet, each.getValue());
      }
      if (!settled.contains(sheet.name())) {
        sheets.add(run(sheet, each.getValue(), whether && !sheet.facts().grouped()));
      }
    }
    stale.drop();
  }

  private boolean removesColumns() {
    return targets.values().stream().flatMap(List::stream).anyMatch(ColumnTarget::removes);
  }

  private SheetRun run(OpenedSheet sheet, List<ColumnTarget> columns, boolean whether)
      throws IOException, WorkbookRefusal {
    return new SheetRun(
        source.zip(),
        sheet,
        new SheetPlan(
            sheet.name(), sheet.entry().part(), sheet.facts(), sheet.map(), columns, reading),
        whether);
  }

  /** An office refuses a workbook without any sheet to look at. */
  private void refuseNothingToSee(WorkbookEdit edit) throws WorkbookRefusal {
    boolean visible = edit.drafts().stream().anyMatch(d -> !d.hidden());
    for (OpenedSheet each : source.sheets()) {
      visible |= each.entry().visibility() == Visibility.VISIBLE && !goneSheets.contains(each);
    }
    if (!visible && !goneSheets.isEmpty()) {
      throw new WorkbookRefusal(
          WorkbookRefusal.Kind.NO_ROOM,
          "The sheet \"%s\" is the last visible one and stays; add or show another sheet first."
              .formatted(goneSheets.get(0).name()));
    }
  }

  private OpenedSheet sheet(String name) throws WorkbookRefusal {
    OpenedSheet sheet = source.sheet(name).orElse(null);
    if (sheet == null || !sheet.entry().isTable()) {
      throw new WorkbookRefusal(
          WorkbookRefusal.Kind.NO_ROOM,
          "The workbook has no sheet with cells named \"%s\".".formatted(name));
    }
    return sheet;
  }

  private void fill(WorkbookEdit edit) throws WorkbookRefusal {
    for (SheetEdit each : edit.sheets()) {
      OpenedSheet sheet = sheet(each.sheet());
      for (ColumnEdit column : each.columns()) {
        target(sheet, ColumnTarget.fill(each, column, Boundary.guarded(column.cells())));
      }
    }
    for (ColumnPlace place : edit.removals().columns()) {
      OpenedSheet sheet = source.sheet(place.sheet()).orElse(null);
      if (sheet != null && sheet.entry().isTable() && !goneSheets.contains(sheet)) {
        target(sheet, ColumnTarget.remove(place));
      }
    }
  }

  private void target(OpenedSheet sheet, ColumnTarget target) {
    targets.computeIfAbsent(sheet.name(), n -> new ArrayList<>()).add(target);
  }

  /** The run of a sheet, a new one if the edit does not speak of the sheet. */
  SheetRun runOf(OpenedSheet sheet) throws IOException, WorkbookRefusal {
    for (SheetRun each : sheets) {
      if (each.sheet().name().equals(sheet.name())) {
        return each;
      }
    }
    SheetRun added = run(sheet, List.of(), false);
    sheets.add(added);
    return added;
  }

  WorkbookEdit edit() {
    return edit;
  }

  CellReading reading() {
    return reading;
  }

  List<SheetRun> sheets() {
    return sheets;
  }

  List<DraftRun> drafts() {
    return drafts;
  }

  List<OpenedSheet> goneSheets() {
    return goneSheets;
  }

  /** Parts of tables that get longer, by name. */
  Map<String, byte[]> longerTables() {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    rows.values().forEach(r -> parts.putAll(r.tableParts()));
    return parts;
  }

  /** The tables of a sheet as they will be. */
  List<TablePart> tables(OpenedSheet sheet) {
    AddedRows added = rows.get(sheet.name());
    return added == null ? sheet.tables() : added.tables();
  }

  WorkbookEdits workbook() {
    return workbook;
  }

  Styles styles() {
    return styles;
  }

  /** Whether rows are put under a list of the sheet. */
  boolean addsRows(OpenedSheet sheet) {
    return rows.containsKey(sheet.name());
  }

  List<ColumnTarget> targets(OpenedSheet sheet) {
    return targets.getOrDefault(sheet.name(), List.of());
  }

  boolean changesAnything() {
    return sheets.stream().anyMatch(SheetRun::changes)
        || drafts.stream().anyMatch(d -> d.differs() || d.hidesOtherwise())
        || !goneSheets.isEmpty()
        || !longerTables().isEmpty()
        || workbook.changesAnything();
  }

  void preview(Consumer<CellChange> changes) throws IOException, WorkbookRefusal {
    for (SheetRun each : sheets) {
      if (each.changes()) {
        each.preview(changes);
      }
    }
    drafts.forEach(d -> d.changes().forEach(changes));
    gone(changes);
  }

  private void gone(Consumer<CellChange> changes) throws IOException, WorkbookRefusal {
    for (OpenedSheet each : goneSheets) {
      if (each.entry().isTable()) {
        try (InputStream in = source.zip().xml(each.entry().part())) {
          WholeSheet.compare(each.name(), in, reading, Map.of(), new CellSet(), changes);
        }
      }
    }
  }

  /**
   * Writes the new package.
   *
   * @param readsBack whether {@link #isIn} will be asked: part of its work is done meanwhile
   * @return how many cells change
   */
  long write(OutputStream out, boolean readsBack) throws IOException, WorkbookRefusal {
    assembly = new Assembly(source, this, readsBack);
    assembly.writeTo(out);
    long[] gone = new long[1];
    gone(c -> gone[0]++);
    return assembly.changedCells() + gone[0];
  }

  /** Whether what was written holds everything that was meant to stay, and the edit. */
  boolean isIn(Path written) throws IOException, WorkbookRefusal {
    // Formulas of sheets that are compared are not gathered again, so none can be calculated.
    WorkbookEdit again = edit.with(Recalculation.NONE);
    Set<String> compared = new HashSet<>();
    for (SheetRun each : sheets) {
      if (each.changes()) {
        compared.add(each.sheet().name());
      }
    }
    PackageZip.requireReadable(written);
    try (OpenedPackage copy = source.reopen(written, compared)) {
      return assembly.isWholeIn(copy.zip())
          && assembly.wasReadAsMeant()
          && !new EditRun(copy, again, assembly.readSheets()).changesAnything();
    }
  }
}
