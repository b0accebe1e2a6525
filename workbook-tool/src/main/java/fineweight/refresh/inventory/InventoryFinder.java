package fineweight.refresh.inventory;

import fineweight.column.CalculatedColumn;
import fineweight.column.FoundTable;
import fineweight.column.HeaderFinder;
import fineweight.column.Headings;
import fineweight.column.RowText;
import fineweight.workbook.Cell;
import fineweight.workbook.CellPlace;
import fineweight.workbook.FileFormat;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Finds the sheet that holds the inventory and its headings, wherever they are. */
public final class InventoryFinder {
  /** Headings stand among the first rows; some more are read to see what the columns hold. */
  private static final int LAST_SAMPLE_ROW = 120;

  /** Fewer headings like ours in a line can be an owner's. */
  private static final int FEWEST_OF_OURS = 6;

  private final Workbook workbook;
  private final OurMarks marks;
  private final Set<String> lists;
  private final HeaderFinder finder = new HeaderFinder(Headings.standard());

  public InventoryFinder(Workbook workbook, OurMarks marks) {
    this(workbook, marks, Set.of());
  }

  /**
   * @param lists sheets that are other lists of their owner's, taken only if they are named
   */
  public InventoryFinder(Workbook workbook, OurMarks marks, Set<String> lists) {
    this.workbook = workbook;
    this.marks = marks;
    this.lists = Set.copyOf(lists);
  }

  private record Found(
      String sheet, FoundTable table, int rows, Map<CalculatedColumn, Integer> ours) {}

  /**
   * @param wanted the sheet that the user named; empty to look in all that are visible
   */
  public Inventory find(Optional<String> wanted) throws WorkbookRefusal, RefreshRefusal {
    List<Found> found = new ArrayList<>();
    for (SheetSummary sheet : workbook.sheets()) {
      boolean looked =
          wanted
              .map(sheet.name()::equalsIgnoreCase)
              .orElse(
                  sheet.visibility() == SheetSummary.Visibility.VISIBLE
                      && !lists.contains(sheet.name()));
      if (looked && sheet.isTable() && !marks.isOurs(sheet.name())) {
        look(sheet.name()).ifPresent(found::add);
      }
    }
    if (found.isEmpty()) {
      throw none(wanted);
    }
    return chosen(found);
  }

  private Optional<Found> look(String sheet) throws WorkbookRefusal {
    List<RowText> sample = new ArrayList<>();
    workbook.read(sheet, column -> true, LAST_SAMPLE_ROW, cells -> add(sample, cells));
    Ours ours = workbook.format() == FileFormat.CSV ? byHeading(sample) : byName(sheet);
    Set<Integer> places = new HashSet<>(ours.places().values());
    Optional<FoundTable> marked =
        places.isEmpty() ? Optional.empty() : finder.at(ours.headerRow(), sample, places);
    int lastRow = workbook.usedArea(sheet).lastRow();
    return marked
        .or(() -> finder.find(sample, places))
        .map(table -> new Found(sheet, table, lastRow - table.headerRow(), ours.places()));
  }

  /** Our columns in a sheet and the row of their headings; no columns if we were never there. */
  private record Ours(int headerRow, Map<CalculatedColumn, Integer> places) {}

  /** Our columns in a text table, which has no names that mark them. */
  public List<WorkbookEdit.ColumnPlace> columnsInText() throws WorkbookRefusal {
    List<WorkbookEdit.ColumnPlace> places = new ArrayList<>();
    for (SheetSummary sheet : workbook.sheets()) {
      List<RowText> sample = new ArrayList<>();
      workbook.read(sheet.name(), column -> true, LAST_SAMPLE_ROW, cells -> add(sample, cells));
      Ours ours = byHeading(sample);
      ours.places()
          .values()
          .forEach(
              column ->
                  places.add(new WorkbookEdit.ColumnPlace(sheet.name(), ours.headerRow(), column)));
    }
    return places;
  }

  private static void add(List<RowText> sample, List<Cell> cells) {
    if (!cells.isEmpty()) {
      sample.add(CellTexts.row(cells));
    }
  }

  private Ours byName(String sheet) {
    Map<CalculatedColumn, Integer> ours = new EnumMap<>(CalculatedColumn.class);
    int headerRow = 0;
    for (Map.Entry<CalculatedColumn, CellPlace> mark : marks.columns().entrySet()) {
      if (mark.getValue().sheet().equals(sheet)) {
        ours.put(mark.getKey(), mark.getValue().column());
        headerRow = mark.getValue().row();
      }
    }
    return new Ours(headerRow, ours);
  }

  /**
   * A text table has no names: our columns are known by many of our headings in one line. Where the
   * owner has a heading like ours, ours is the one that says so.
   */
  private static Ours byHeading(List<RowText> sample) {
    for (RowText row : sample) {
      Map<CalculatedColumn, Integer> ours = new EnumMap<>(CalculatedColumn.class);
      for (CalculatedColumn column : CalculatedColumn.values()) {
        String heading = column.heading("[A-Z]{3}");
        place(row, heading + Pattern.quote(OurMarks.BEHIND_HEADING))
            .or(() -> place(row, heading))
            .ifPresent(found -> ours.put(column, found));
      }
      if (ours.size() >= FEWEST_OF_OURS) {
        return new Ours(row.row(), ours);
      }
    }
    return new Ours(0, Map.of());
  }

  private static Optional<Integer> place(RowText row, String heading) {
    return row.cells().entrySet().stream()
        .filter(cell -> cell.getValue().matches(heading))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  private Inventory chosen(List<Found> found) throws RefreshRefusal {
    Found best = found.get(0);
    for (Found other : found) {
      boolean marked = !other.ours().isEmpty() && best.ours().isEmpty();
      boolean larger =
          other.ours().isEmpty() == best.ours().isEmpty() && weight(other) > weight(best);
      best = marked || larger ? other : best;
    }
    List<String> rivals = new ArrayList<>();
    for (Found other : found) {
      boolean rival =
          other != best
              && best.ours().isEmpty()
              && other.rows() * 2 >= best.rows()
              && other.table().score() * 3 >= best.table().score() * 2;
      if (rival) {
        rivals.add(other.sheet());
      }
    }
    if (!rivals.isEmpty()) {
      throw new RefreshRefusal(
          RefreshRefusal.Kind.SEVERAL_INVENTORIES,
          workbook.path()
              + ": the sheets \""
              + best.sheet()
              + "\" and \""
              + String.join("\", \"", rivals)
              + "\" both look like an inventory; name the one to fill with --sheet \""
              + best.sheet()
              + "\".");
    }
    Found taken = best;
    List<String> others = found.stream().filter(other -> other != taken).map(Found::sheet).toList();
    return new Inventory(best.sheet(), best.table(), best.ours(), others);
  }

  private static long weight(Found found) {
    return (long) found.table().score() * Math.min(found.rows(), 1000);
  }

  private RefreshRefusal none(Optional<String> wanted) {
    Set<String> names = new java.util.LinkedHashSet<>();
    workbook.sheets().forEach(sheet -> names.add(sheet.name()));
    if (wanted.isPresent() && names.stream().noneMatch(wanted.get()::equalsIgnoreCase)) {
      return new RefreshRefusal(
          RefreshRefusal.Kind.NO_INVENTORY,
          workbook.path()
              + " has no sheet \""
              + wanted.get()
              + "\"; it has \""
              + String.join("\", \"", names)
              + "\".");
    }
    String where =
        wanted
            .map(sheet -> ", sheet \"" + sheet + "\"")
            .orElse(names.contains("") ? "" : ", sheets \"" + String.join("\", \"", names) + "\"");
    return new RefreshRefusal(
        RefreshRefusal.Kind.NO_INVENTORY,
        workbook.path()
            + where
            + ": no row of headings of a coin inventory was found in the first 40 rows; put headings such as"
            + " Year, Denomination, Type and Count (or only Description) above the list.");
  }

  /** The cell of a heading, for messages. */
  public static CellPlace heading(Inventory inventory, int column) {
    return new CellPlace(inventory.sheet(), inventory.table().headerRow(), column);
  }
}
