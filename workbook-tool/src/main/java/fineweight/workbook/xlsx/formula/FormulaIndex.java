package fineweight.workbook.xlsx.formula;

import fineweight.workbook.CellPlace;
import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.xlsx.formula.SheetFormulas.Shape;
import fineweight.workbook.xlsx.part.CellRef;
import fineweight.workbook.xlsx.sheet.CellSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * The owner's formulas of a workbook. Formulas that are one and the same, filled down, share their
 * needs, so that a formula costs a few numbers.
 */
public final class FormulaIndex {
  private static final int FIELDS = 6;

  private final Vocabulary vocabulary;
  private final List<Needs> needs = new ArrayList<>();
  private final Map<Needs, Integer> known = new HashMap<>();
  private final Map<Integer, Area> spread = new HashMap<>();
  private final List<Shape> shapes = new ArrayList<>();
  private final List<String> sheetNames = new ArrayList<>();
  private int[] formulas = new int[FIELDS * 64];
  private int count;

  /** Tells which cells are not the owner's. */
  @FunctionalInterface
  public interface Ours {
    boolean test(int row, int column);
  }

  public FormulaIndex(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  /** Takes the formulas of one sheet in; our own cells are passed over. */
  public void add(String name, SheetFormulas formulas, Ours ours) {
    int sheet = vocabulary.sheet(name);
    while (sheetNames.size() <= sheet) {
      sheetNames.add("");
    }
    sheetNames.set(sheet, name);
    int firstShape = shapes.size();
    shapes.addAll(formulas.shapes());
    int[] ids = new int[formulas.shapes().size()];
    Arrays.fill(ids, -1);
    formulas.forEach(
        (row, column, shape, stored) -> {
          if (ours.test(row, column)) {
            return;
          }
          Shape text = formulas.shapes().get(shape);
          if (ids[shape] < 0) {
            ids[shape] = id(needsOf(text, sheet));
          }
          Area area = CellRef.area(text.area());
          if (area != null) {
            spread.put(count, area);
          }
          add(new int[] {sheet, row, column, ids[shape], stored ? 1 : 0, firstShape + shape});
        });
  }

  private Needs needsOf(Shape shape, int sheet) {
    String text = shape.kind().equals("dataTable") ? tableInputs(shape) : shape.text();
    return FormulaReader.read(vocabulary, text, sheet, shape.row(), shape.column());
  }

  /** A data table looks at its input cells and at the row above and the column beside it. */
  private static String tableInputs(Shape shape) {
    StringBuilder inputs = new StringBuilder();
    append(inputs, shape.firstInput());
    append(inputs, shape.secondInput());
    Area area = CellRef.area(shape.area());
    if (area != null && area.firstRow() > 0 && area.firstColumn() > 0) {
      String corner = reference(area.firstRow() - 1, area.firstColumn() - 1);
      append(inputs, corner + ":" + reference(area.firstRow() - 1, area.lastColumn()));
      append(inputs, corner + ":" + reference(area.lastRow(), area.firstColumn() - 1));
    }
    return inputs.toString();
  }

  private static void append(StringBuilder inputs, String reference) {
    if (reference != null) {
      inputs.append(reference).append(' ');
    }
  }

  private static String reference(int row, int column) {
    return CellPlace.letters(column) + (row + 1);
  }

  private int id(Needs each) {
    return known.computeIfAbsent(
        each,
        n -> {
          needs.add(n);
          return needs.size() - 1;
        });
  }

  private void add(int[] fields) {
    int place = count * FIELDS;
    if (place == formulas.length) {
      formulas = Arrays.copyOf(formulas, place * 2);
    }
    System.arraycopy(fields, 0, formulas, place, FIELDS);
    count++;
  }

  /**
   * One formula of the owner.
   *
   * @param sheet by number
   * @param text as written for the cell in {@code textRow} and {@code textColumn}
   * @param area of an array; null for none
   * @param plain whether an office would take the text as it is for this cell
   */
  public record Found(
      int sheet,
      int row,
      int column,
      String text,
      int textRow,
      int textColumn,
      Area area,
      boolean plain) {}

  /** Takes each formula whose text passes. */
  public void find(Predicate<String> wanted, Consumer<Found> taker) {
    boolean[] passes = new boolean[shapes.size()];
    for (int i = 0; i < passes.length; i++) {
      passes[i] = wanted.test(shapes.get(i).text());
    }
    for (int i = 0; i < count; i++) {
      if (passes[formulas[i * FIELDS + 5]]) {
        taker.accept(found(i));
      }
    }
  }

  /**
   * Takes each formula that stands in one of the cells or has no stored result.
   *
   * @param limits the last row and column of each sheet by its number
   * @param seen gets all cells that these formulas look at
   */
  public void collect(
      List<CellSet> cells, List<Area> limits, List<CellSet> seen, Consumer<Found> taker) {
    for (int i = 0; i < count; i++) {
      int place = i * FIELDS;
      int sheet = formulas[place];
      boolean stored = formulas[place + 4] == 1;
      if (!stored || cells.get(sheet).contains(formulas[place + 1], formulas[place + 2])) {
        taker.accept(found(i));
        for (Reference area : needs.get(formulas[place + 3]).areas()) {
          area.addTo(seen, limits, sheet, formulas[place + 1], formulas[place + 2]);
        }
      }
    }
  }

  private Found found(int i) {
    int place = i * FIELDS;
    Shape shape = shapes.get(formulas[place + 5]);
    return new Found(
        formulas[place],
        formulas[place + 1],
        formulas[place + 2],
        shape.text(),
        shape.row(),
        shape.column(),
        spread.get(i),
        !shape.kind().equals("dataTable"));
  }

  /** A formula that looks at a sheet; empty if none does. */
  public Optional<CellPlace> userOf(int sheet) {
    for (int i = 0; i < count; i++) {
      int place = i * FIELDS;
      Needs each = needs.get(formulas[place + 3]);
      if (formulas[place] != sheet && each.areas().stream().anyMatch(a -> a.touchesSheet(sheet))) {
        return Optional.of(
            new CellPlace(
                sheetNames.get(formulas[place]), formulas[place + 1], formulas[place + 2]));
      }
    }
    return Optional.empty();
  }

  /**
   * The formulas with a stored result that depends, through whatever chain, on changed cells or
   * names.
   *
   * @param changed by the sheet's number; on return everything that depends is in it too
   * @param changedNames in lower case
   */
  public List<CellSet> stale(List<CellSet> changed, Set<String> changedNames) {
    List<CellSet> stale = new ArrayList<>();
    changed.forEach(c -> stale.add(new CellSet()));
    boolean[] done = new boolean[count];
    boolean forward = true;
    while (sweep(changed, changedNames, stale, done, forward)) {
      forward = !forward;
    }
    return stale;
  }

  private boolean sweep(
      List<CellSet> changed,
      Set<String> changedNames,
      List<CellSet> stale,
      boolean[] done,
      boolean forward) {
    boolean grew = false;
    for (int n = 0; n < count; n++) {
      int i = forward ? n : count - 1 - n;
      if (!done[i] && depends(i * FIELDS, changed, changedNames)) {
        done[i] = true;
        grew = true;
        mark(i, changed, stale);
      }
    }
    return grew;
  }

  private boolean depends(int place, List<CellSet> changed, Set<String> changedNames) {
    Needs each = needs.get(formulas[place + 3]);
    for (String name : each.names()) {
      if (changedNames.contains(name)) {
        return true;
      }
    }
    for (Reference area : each.areas()) {
      if (area.meets(formulas[place], formulas[place + 1], formulas[place + 2], changed)) {
        return true;
      }
    }
    return false;
  }

  private void mark(int i, List<CellSet> changed, List<CellSet> stale) {
    int place = i * FIELDS;
    int sheet = formulas[place];
    changed.get(sheet).add(formulas[place + 1], formulas[place + 2]);
    if (formulas[place + 4] == 1) {
      stale.get(sheet).add(formulas[place + 1], formulas[place + 2]);
    }
    Area area = spread.get(i);
    if (area != null) {
      changed.get(sheet).addAll(area);
      stale.get(sheet).addAll(area);
    }
  }
}
