package fineweight.workbook.xls;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellPlace;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Keeps account of what an edit changes. */
final class XlsChanges {
  private final Map<CellPlace, CellChange> cells = new LinkedHashMap<>();
  private final Set<CellPlace> looks = new HashSet<>();
  private boolean others;

  void cell(CellPlace place, String before, String after) {
    CellChange earlier = cells.remove(place);
    String first = earlier == null ? before : earlier.before();
    if (!first.equals(after)) {
      cells.put(place, new CellChange(place, first, after));
    }
  }

  /** A cell that was not there gets a look and no content. */
  void look(CellPlace place) {
    looks.add(place);
  }

  /** Something changes that is no cell: a name, a sheet, a width. */
  void other() {
    others = true;
  }

  Collection<CellChange> cells() {
    return List.copyOf(cells.values());
  }

  boolean has(CellPlace place) {
    return cells.containsKey(place) || looks.contains(place);
  }

  boolean isEmpty() {
    return cells.isEmpty() && looks.isEmpty() && !others;
  }
}
