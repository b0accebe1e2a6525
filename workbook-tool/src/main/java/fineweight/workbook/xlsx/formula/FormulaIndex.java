package fineweight.workbook.xlsx.formula;

import fineweight.workbook.CellPlace;
import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.part.CellRef;
import fineweight.workbook.xlsx.sheet.CellSet;
import fineweight.workbook.xlsx.sheet.CellXml;
import fineweight.workbook.xlsx.sheet.SheetVisitor;
import fineweight.workbook.xlsx.sheet.SheetWalk;
import fineweight.workbook.xlsx.xml.PlainUtf8;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The owner's formulas of a workbook. Formulas that are one and the same, filled down, share their
 * needs, so that a formula costs a few numbers.
 */
public final class FormulaIndex {
  private static final int FIELDS = 5;

  private final Vocabulary vocabulary;
  private final List<Needs> needs = new ArrayList<>();
  private final Map<Needs, Integer> known = new HashMap<>();
  private final Map<Integer, Area> spread = new HashMap<>();
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

  /** Takes the cells of one sheet, seen elsewhere. */
  public interface Sheet {
    void cell(CellXml cell);

    /** No more cells follow. */
    void finish();
  }

  /** Reads the formulas of one sheet. */
  public void read(String name, String part, InputStream raw, Ours ours)
      throws IOException, WorkbookRefusal {
    SheetFormulas reading = sheet(name, ours);
    SheetWalk.walk(name, part, PlainUtf8.of(raw), reading);
    reading.finish();
  }

  /** For a sheet that is walked over anyway. */
  public Sheet seen(String name, Ours ours) {
    return sheet(name, ours);
  }

  private SheetFormulas sheet(String name, Ours ours) {
    int sheet = vocabulary.sheet(name);
    while (sheetNames.size() <= sheet) {
      sheetNames.add("");
    }
    sheetNames.set(sheet, name);
    return new SheetFormulas(sheet, ours);
  }

  private final class SheetFormulas implements SheetVisitor, Sheet {
    private final int sheet;
    private final Ours ours;
    private final Map<Integer, Integer> groups = new HashMap<>();
    private final List<int[]> members = new ArrayList<>();

    SheetFormulas(int sheet, Ours ours) {
      this.sheet = sheet;
      this.ours = ours;
    }

    @Override
    public void cell(CellXml cell) {
      if (!cell.isFormula()) {
        return;
      }
      boolean own = ours.test(cell.row(), cell.column());
      if (own && cell.sharedGroup() < 0) {
        return;
      }
      int stored = cell.hasValue() ? 1 : 0;
      if (cell.sharedGroup() >= 0 && cell.formulaText().isEmpty()) {
        if (!own) {
          members.add(new int[] {cell.sharedGroup(), cell.row(), cell.column(), stored});
        }
        return;
      }
      int id = id(needsOf(cell));
      if (cell.sharedGroup() >= 0) {
        groups.put(cell.sharedGroup(), id);
      }
      if (!own) {
        Area area = CellRef.area(cell.formulaArea());
        if (area != null && cell.sharedGroup() < 0) {
          spread.put(count, area);
        }
        add(sheet, cell.row(), cell.column(), id, stored);
      }
    }

    private Needs needsOf(CellXml cell) {
      if (!cell.formulaKind().equals("dataTable")) {
        return FormulaReader.read(vocabulary, cell.formulaText(), sheet, cell.row(), cell.column());
      }
      return FormulaReader.read(vocabulary, tableInputs(cell), sheet, cell.row(), cell.column());
    }

    /** A data table looks at its input cells and at the row above and the column beside it. */
    private String tableInputs(CellXml cell) {
      StringBuilder inputs = new StringBuilder();
      append(inputs, cell.firstInput());
      append(inputs, cell.secondInput());
      Area area = CellRef.area(cell.formulaArea());
      if (area != null && area.firstRow() > 0 && area.firstColumn() > 0) {
        String corner = reference(area.firstRow() - 1, area.firstColumn() - 1);
        append(inputs, corner + ":" + reference(area.firstRow() - 1, area.lastColumn()));
        append(inputs, corner + ":" + reference(area.lastRow(), area.firstColumn() - 1));
      }
      return inputs.toString();
    }

    private void append(StringBuilder inputs, String reference) {
      if (reference != null) {
        inputs.append(reference).append(' ');
      }
    }

    private String reference(int row, int column) {
      return CellPlace.letters(column) + (row + 1);
    }

    /** A member may stand before the cell that holds its text. */
    @Override
    public void finish() {
      for (int[] member : members) {
        Integer id = groups.get(member[0]);
        if (id != null) {
          add(sheet, member[1], member[2], id, member[3]);
        }
      }
    }
  }

  private int id(Needs each) {
    return known.computeIfAbsent(
        each,
        n -> {
          needs.add(n);
          return needs.size() - 1;
        });
  }

  private void add(int sheet, int row, int column, int id, int stored) {
    int place = count * FIELDS;
    if (place == formulas.length) {
      formulas = Arrays.copyOf(formulas, place * 2);
    }
    formulas[place] = sheet;
    formulas[place + 1] = row;
    formulas[place + 2] = column;
    formulas[place + 3] = id;
    formulas[place + 4] = stored;
    count++;
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
