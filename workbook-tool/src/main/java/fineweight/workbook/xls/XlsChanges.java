package fineweight.workbook.xls;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellPlace;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Keeps account of what an edit changes. */
final class XlsChanges {
  private final Map<CellPlace, CellChange> cells = new LinkedHashMap<>();
  private boolean others;

  void cell(CellPlace place, String before, String after) {
    CellChange earlier = cells.remove(place);
    String first = earlier == null ? before : earlier.before();
    if (!first.equals(after)) {
      cells.put(place, new CellChange(place, first, after));
    }
  }

  /** Something changes that is no cell: a name, a sheet, a width. */
  void other() {
    others = true;
  }

  Collection<CellChange> cells() {
    return List.copyOf(cells.values());
  }

  boolean has(CellPlace place) {
    return cells.containsKey(place);
  }

  boolean isEmpty() {
    return cells.isEmpty() && !others;
  }
}
