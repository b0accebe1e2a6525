package fineweight.workbook.xlsx.splice;

import fineweight.workbook.CellLook;
import fineweight.workbook.xlsx.style.Styles;
import java.util.ArrayList;
import java.util.List;

/** Finds the format of a new cell: its column's or row's own, else the left neighbour's look. */
final class CellLooks {
  private final Styles styles;
  private final ColumnWidths widths;
  private final List<Found> found = new ArrayList<>();
  private int rowStyle;
  private int neighbour;

  CellLooks(Styles styles, ColumnWidths widths) {
    this.styles = styles;
    this.widths = widths;
  }

  /**
   * @param style the row's own format; -1 for none
   */
  void beginRow(int style) {
    rowStyle = style;
    neighbour = -1;
  }

  /** A cell with that format stands to the left of what follows. */
  void passed(int style) {
    neighbour = style;
  }

  int forNew(int column, Wish wish) {
    if (wish.style() >= 0) {
      return wish.style();
    }
    int own = rowStyle > 0 ? rowStyle : widths.style(column);
    if (wish.look() == null) {
      return neighbour >= 0 ? neighbour : Math.max(0, own);
    }
    int model = own > 0 ? own : Math.max(0, neighbour);
    Found last = column < found.size() ? found.get(column) : null;
    if (last == null || last.look != wish.look() || last.model != model || last.own != own > 0) {
      last = new Found(wish.look(), model, own > 0, styles.derive(model, wish.look(), own > 0));
      while (found.size() <= column) {
        found.add(null);
      }
      found.set(column, last);
    }
    return last.style;
  }

  /** What was found last for a column: most rows are like the one above. */
  private record Found(CellLook look, int model, boolean own, int style) {}
}
