package fineweight.workbook.xlsx.splice;

import fineweight.workbook.xlsx.style.Styles;

/** Finds the format of a new cell: its column's or row's own, else the left neighbour's look. */
final class CellLooks {
  private final Styles styles;
  private final ColumnWidths widths;
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
    return own > 0
        ? styles.derive(own, wish.look(), true)
        : styles.derive(Math.max(0, neighbour), wish.look(), false);
  }
}
