package fineweight.workbook.xlsx;

import fineweight.workbook.Calculation;
import fineweight.workbook.Calculation.Formula;
import fineweight.workbook.Cell;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellPlace;
import fineweight.workbook.CellValue;
import fineweight.workbook.NamedCell;
import fineweight.workbook.Recalculation;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.formula.FormulaIndex;
import fineweight.workbook.xlsx.formula.FormulaIndex.Found;
import fineweight.workbook.xlsx.sheet.CellCompare;
import fineweight.workbook.xlsx.sheet.CellSet;
import fineweight.workbook.xlsx.sheet.CellStream;
import fineweight.workbook.xlsx.splice.ColumnTarget;
import fineweight.workbook.xlsx.xml.Element;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The results of the owner's formulas that call functions which are calculated here. Only as much
 * of the workbook is read as these formulas look at.
 */
final class CalledResults {
  private static final BigDecimal SECONDS_OF_A_DAY = new BigDecimal("86400");

  private final OpenedPackage source;
  private final EditRun run;
  private final FormulaIndex index;
  private final Recalculation recalculation;
  private final List<CellSet> called = new ArrayList<>();
  private final Set<CellPlace> wanted = new LinkedHashSet<>();
  private final Map<CellPlace, CellValue> values = new HashMap<>();
  private final Map<CellPlace, String> texts = new HashMap<>();

  CalledResults(OpenedPackage source, EditRun run, FormulaIndex index) {
    this.source = source;
    this.run = run;
    this.index = index;
    recalculation = run.edit().recalculation();
    source.sheets().forEach(sheet -> called.add(new CellSet()));
    index.find(recalculation.calculator()::concerns, this::take);
  }

  private void take(Found found) {
    Area area = found.area();
    if (area == null) {
      area = new Area(found.row(), found.column(), found.row(), found.column());
    }
    called.get(found.sheet()).addAll(area);
    for (int row = area.firstRow(); row <= area.lastRow(); row++) {
      for (int column = area.firstColumn(); column <= area.lastColumn(); column++) {
        wanted.add(new CellPlace(name(found.sheet()), row, column));
      }
    }
  }

  private String name(int sheet) {
    return source.sheets().get(sheet).name();
  }

  boolean areAny() {
    return !wanted.isEmpty();
  }

  void addTo(List<CellSet> cells) {
    for (int i = 0; i < called.size(); i++) {
      called.get(i).forEach(cells.get(i)::add);
    }
  }

  /** The cells but for those that are calculated here: a result that cannot be found stays. */
  CellSet without(int sheet, CellSet cells) {
    return wanted.isEmpty() ? cells : cells.without(called.get(sheet));
  }

  /**
   * @param reach all that depends on what changes and on the formulas that are calculated here
   * @param changed gets the cells whose result changes
   */
  void calculate(List<CellSet> reach, List<CellSet> changed) throws IOException, WorkbookRefusal {
    List<Found> formulas = new ArrayList<>();
    List<CellSet> seen = new ArrayList<>();
    reach.forEach(each -> seen.add(new CellSet()));
    index.collect(reach, limits(reach.size()), seen, formulas::add);
    for (Found each : formulas) {
      seen.get(each.sheet()).add(each.row(), each.column());
    }
    addTo(seen);
    for (int i = 0; i < source.sheets().size(); i++) {
      read(source.sheets().get(i), seen.get(i));
    }
    Map<CellPlace, CellValue> results =
        recalculation.calculator().results(calculation(formulas), wanted);
    for (int i = 0; i < source.sheets().size(); i++) {
      store(i, results, changed);
    }
  }

  private void store(int sheet, Map<CellPlace, CellValue> results, List<CellSet> changed)
      throws IOException, WorkbookRefusal {
    for (CellPlace place : wanted) {
      if (!place.sheet().equals(name(sheet))) {
        continue;
      }
      CellValue result = results.get(place);
      if (result == null) {
        recalculation.left().accept(place);
      } else if (!CellCompare.same(values.getOrDefault(place, CellValue.BLANK), result)) {
        changed.get(sheet).add(place.row(), place.column());
        run.runOf(source.sheets().get(sheet)).results().put(place.row(), place.column(), result);
      }
    }
  }

  /** How far each sheet reaches, what is to be written included. */
  private List<Area> limits(int count) {
    List<Area> limits = new ArrayList<>();
    for (OpenedSheet sheet : source.sheets()) {
      int row = sheet.facts().lastRow();
      int column = sheet.facts().lastColumn();
      for (ColumnTarget each : run.targets(sheet)) {
        row = Math.max(row, each.removes() ? row : each.lastRow());
        column = Math.max(column, each.column());
      }
      limits.add(new Area(0, 0, row, column));
    }
    while (limits.size() < count) {
      limits.add(new Area(0, 0, 0, 0));
    }
    run.drafts().forEach(each -> limits.set(number(each), extent(each)));
    return limits;
  }

  private int number(DraftRun draft) {
    int number = source.sheets().indexOf(draft.old());
    if (number >= 0) {
      return number;
    }
    List<DraftRun> fresh = run.drafts().stream().filter(each -> each.old() == null).toList();
    return source.sheets().size() + fresh.indexOf(draft);
  }

  private static Area extent(DraftRun draft) {
    List<List<DraftCell>> rows = draft.draft().rows();
    int columns = rows.stream().mapToInt(List::size).max().orElse(0);
    return new Area(0, 0, Math.max(0, rows.size() - 1), Math.max(0, columns - 1));
  }

  private void read(OpenedSheet sheet, CellSet cells) throws IOException, WorkbookRefusal {
    boolean drafted = run.drafts().stream().anyMatch(each -> sheet.equals(each.old()));
    if (cells.isEmpty() || drafted || run.goneSheets().contains(sheet)) {
      return;
    }
    if (sheet.entry().isTable()) {
      try (InputStream in = source.zip().xml(sheet.entry().part())) {
        CellStream.read(
            sheet.name(),
            sheet.entry().part(),
            in,
            run.reading(),
            cells::hasColumn,
            Integer.MAX_VALUE,
            row -> row.stream().filter(cell -> isIn(cells, cell.place())).forEach(this::keep),
            sheet.map());
      }
    }
    for (ColumnTarget target : run.targets(sheet)) {
      cells.forEach(
          target.column(),
          row -> put(new CellPlace(sheet.name(), row, target.column()), target.contentAt(row)));
    }
  }

  private static boolean isIn(CellSet cells, CellPlace place) {
    return cells.contains(place.row(), place.column());
  }

  private void keep(Cell cell) {
    values.put(cell.place(), plain(cell.value()));
    cell.formula().filter(text -> !text.isEmpty()).ifPresent(text -> texts.put(cell.place(), text));
  }

  /** To a formula a date is a number of days. */
  private CellValue plain(CellValue value) {
    if (!(value instanceof CellValue.Date date)) {
      return value;
    }
    BigDecimal days =
        new CellContent.Day(date.value().toLocalDate())
            .serial(source.workbook().counts1904())
            .value();
    BigDecimal seconds = BigDecimal.valueOf(date.value().toLocalTime().toSecondOfDay());
    return new CellValue.Number(days.add(seconds.divide(SECONDS_OF_A_DAY, MathContext.DECIMAL64)));
  }

  /** What we are about to write counts, not what stands there. */
  private void put(CellPlace place, CellContent content) {
    if (content != null) {
      values.put(place, shown(content));
    }
  }

  private CellValue shown(CellContent content) {
    if (content instanceof CellContent.Number number) {
      return new CellValue.Number(number.value());
    }
    if (content instanceof CellContent.Text text) {
      return text(text.value());
    }
    if (content instanceof CellContent.Day day) {
      return new CellValue.Number(day.serial(source.workbook().counts1904()).value());
    }
    if (content instanceof CellContent.Formula formula) {
      return formula.result() != null
          ? new CellValue.Number(formula.result())
          : text(formula.text());
    }
    return CellValue.BLANK;
  }

  private static CellValue text(String text) {
    return text == null || text.isEmpty() ? CellValue.BLANK : new CellValue.Text(text);
  }

  private Calculation calculation(List<Found> found) {
    List<String> sheets = new ArrayList<>(source.sheets().stream().map(OpenedSheet::name).toList());
    for (DraftRun draft : run.drafts()) {
      if (draft.old() == null) {
        sheets.add(draft.draft().name());
      }
      drafted(draft);
    }
    List<Formula> formulas = new ArrayList<>();
    for (Found each : found) {
      CellPlace place = new CellPlace(name(each.sheet()), each.row(), each.column());
      String own = texts.get(place);
      CellPlace writtenFor =
          own != null ? place : new CellPlace(place.sheet(), each.textRow(), each.textColumn());
      // A data table shows what is stored.
      if (each.plain()) {
        formulas.add(
            new Formula(
                place,
                own != null ? own : each.text(),
                writtenFor,
                Optional.ofNullable(each.area())));
      }
    }
    return new Calculation(
        sheets, source.workbook().counts1904(), names(), Map.copyOf(values), formulas);
  }

  private void drafted(DraftRun draft) {
    List<List<DraftCell>> rows = draft.draft().rows();
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < rows.get(row).size(); column++) {
        DraftCell cell = rows.get(row).get(column);
        if (cell != null) {
          put(new CellPlace(draft.draft().name(), row, column), cell.content());
        }
      }
    }
  }

  private List<Calculation.Name> names() {
    List<Calculation.Name> names = new ArrayList<>();
    Set<String> ours = new LinkedHashSet<>();
    for (NamedCell each : run.edit().names()) {
      names.add(new Calculation.Name(each.name(), "", each.refersTo()));
      ours.add(each.name().toLowerCase(Locale.ROOT));
    }
    for (Element name : source.workbook().definedNames()) {
      String word = name.get("name");
      int sheet = name.number("localSheetId", -1);
      boolean known = sheet < source.sheets().size();
      boolean replaced = word == null || sheet < 0 && ours.contains(word.toLowerCase(Locale.ROOT));
      if (known && !replaced) {
        names.add(new Calculation.Name(word, sheet < 0 ? "" : name(sheet), name.text()));
      }
    }
    return names;
  }
}
