package fineweight.workbook.oracle.formula;

import fineweight.workbook.CellPlace;
import fineweight.workbook.oracle.formula.Formulas.FormulaCell;
import fineweight.workbook.oracle.parts.PackageParts;
import fineweight.workbook.oracle.parts.Places.Area;
import fineweight.workbook.oracle.parts.XmlElement;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Which formula cells depend on cells that changed, found on a way of its own. It gives two
 * answers: those that certainly depend, and those that might (a reference that is computed, a table
 * reference not split by columns, members of an array).
 */
public final class DependencyWalk {
  private final PackageParts parts;
  private final TableAreas tables;
  private final Map<FormulaCell, Reach> reaches = new HashMap<>();

  private record Reach(List<Area> precise, List<Area> loose, Set<String> names, boolean[] unsure) {
    Reach() {
      this(new ArrayList<>(), new ArrayList<>(), new HashSet<>(), new boolean[1]);
    }
  }

  /**
   * @param parts whose formulas are looked at
   * @param after the package with the tables as they are now: they may have grown
   */
  public DependencyWalk(PackageParts parts, PackageParts after) throws IOException {
    this.parts = parts;
    this.tables = new TableAreas(after);
    List<XmlElement> names = parts.definedNames();
    for (FormulaCell cell : new Formulas(parts).cells()) {
      Reach reach = new Reach();
      reach.unsure[0] = cell.dataTable();
      read(cell.text(), cell.place(), cell.down(), cell.right(), names, reach, 0);
      reaches.put(cell, reach);
    }
  }

  /**
   * Cells with a formula that certainly read one of these cells or names, on whatever way.
   *
   * @param names defined names, lower case
   */
  public Set<CellPlace> certain(Set<CellPlace> cells, Set<String> names) {
    return spread(cells, List.of(), names, false);
  }

  /** Those that may read one of these cells, areas or names; results of arrays included. */
  public Set<CellPlace> possible(Set<CellPlace> cells, List<Area> areas, Set<String> names) {
    return spread(cells, areas, names, true);
  }

  /** Cells that show a result of a formula whose text names a function; arrays included. */
  public Set<CellPlace> calling(String function) {
    Set<CellPlace> found = new HashSet<>();
    for (FormulaCell cell : reaches.keySet()) {
      if (cell.text().toUpperCase(Locale.ROOT).contains(function)) {
        found.addAll(places(cell.results()));
      }
    }
    return found;
  }

  private Set<CellPlace> spread(
      Set<CellPlace> cells, List<Area> areas, Set<String> names, boolean loose) {
    DirtyCells dirty = new DirtyCells();
    cells.forEach(dirty::add);
    Set<CellPlace> found = new HashSet<>();
    Set<FormulaCell> open = new HashSet<>(reaches.keySet());
    boolean grown = true;
    while (grown) {
      List<FormulaCell> next =
          open.stream()
              .filter(each -> reads(reaches.get(each), dirty, areas, names, loose))
              .toList();
      grown = !next.isEmpty();
      for (FormulaCell cell : next) {
        open.remove(cell);
        found.add(cell.place());
        dirty.add(cell.place());
        dirty.add(cell.results());
        if (loose) {
          found.addAll(places(cell.results()));
        }
      }
    }
    return found;
  }

  private static boolean reads(
      Reach reach, DirtyCells dirty, List<Area> areas, Set<String> names, boolean loose) {
    if (reach.names.stream().anyMatch(names::contains)) {
      return true;
    }
    if (loose && (reach.unsure[0] || reach.loose.stream().anyMatch(dirty::touches))) {
      return true;
    }
    return reach.precise.stream()
        .anyMatch(each -> dirty.touches(each) || areas.stream().anyMatch(area -> meet(area, each)));
  }

  private static boolean meet(Area one, Area other) {
    return one.sheet().equalsIgnoreCase(other.sheet())
        && one.firstRow() <= other.lastRow()
        && other.firstRow() <= one.lastRow()
        && one.firstColumn() <= other.lastColumn()
        && other.firstColumn() <= one.lastColumn();
  }

  private static List<CellPlace> places(Area area) {
    List<CellPlace> places = new ArrayList<>();
    for (int row = area.firstRow(); row <= area.lastRow(); row++) {
      for (int column = area.firstColumn(); column <= area.lastColumn(); column++) {
        places.add(new CellPlace(area.sheet(), row, column));
      }
    }
    return places;
  }

  private void read(
      String text,
      CellPlace home,
      int down,
      int right,
      List<XmlElement> names,
      Reach reach,
      int depth) {
    FormulaReferences references = FormulaReferences.of(text);
    reach.unsure[0] |= references.uncertain() || depth > 20;
    if (depth > 20) {
      return;
    }
    for (FormulaReferences.Reference reference : references.found()) {
      if (reference instanceof FormulaReferences.Cells cells) {
        // In a name a relative reference means something else in every cell.
        reach.unsure[0] |= depth > 0 && cells.relative();
        addCells(cells, home, down, right, reach);
      } else if (reference instanceof FormulaReferences.TableColumns columns) {
        tables.of(columns, home).ifPresent(table -> addTable(table, columns.inside(), home, reach));
      } else if (reference instanceof FormulaReferences.Name name) {
        addName(name, home, names, reach, depth);
      }
    }
  }

  private void addName(
      FormulaReferences.Name name, CellPlace home, List<XmlElement> names, Reach reach, int depth) {
    reach.names.add(name.name().toLowerCase(Locale.ROOT));
    tables.named(name.name()).ifPresent(table -> addTable(table, "#All", home, reach));
    String scope = name.sheet().isEmpty() ? home.sheet() : name.sheet();
    XmlElement best = null;
    for (XmlElement each : names) {
      if (each.get("name").equalsIgnoreCase(name.name())) {
        String local = each.get("localSheetId");
        boolean mine =
            !local.isEmpty()
                && parts.sheets().get(Integer.parseInt(local)).name().equalsIgnoreCase(scope);
        best = mine || (local.isEmpty() && best == null) ? each : best;
      }
    }
    if (best != null) {
      read(best.text(), home, 0, 0, names, reach, depth + 1);
    }
  }

  private void addTable(TableAreas.Table table, String inside, CellPlace home, Reach reach) {
    reach.precise.add(TableAreas.precise(table, inside, home));
    reach.loose.add(table.area());
  }

  private void addCells(
      FormulaReferences.Cells cells, CellPlace home, int down, int right, Reach reach) {
    Area moved = cells.moved(down, right);
    for (String sheet : sheets(cells, home)) {
      reach.precise.add(
          new Area(
              sheet, moved.firstRow(), moved.firstColumn(), moved.lastRow(), moved.lastColumn()));
    }
  }

  private List<String> sheets(FormulaReferences.Cells cells, CellPlace home) {
    if (cells.firstSheet().isEmpty()) {
      return List.of(home.sheet());
    }
    List<String> all = parts.sheets().stream().map(PackageParts.Sheet::name).toList();
    int first = indexOf(all, cells.firstSheet());
    int last = indexOf(all, cells.lastSheet());
    return first < 0 || last < first ? List.of(cells.firstSheet()) : all.subList(first, last + 1);
  }

  private static int indexOf(List<String> names, String wanted) {
    for (int i = 0; i < names.size(); i++) {
      if (names.get(i).equalsIgnoreCase(wanted)) {
        return i;
      }
    }
    return -1;
  }
}
