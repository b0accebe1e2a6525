package fineweight.workbook;

/**
 * A sheet, without its cells. Immutable.
 *
 * @param name the name on its tab
 * @param visibility whether its owner sees it
 * @param isProtected whether the sheet is protected against changes
 * @param isTable false for a chart sheet or a dialog: it has no cells
 */
public record SheetSummary(
    String name, Visibility visibility, boolean isProtected, boolean isTable) {
  /** How a sheet is shown. */
  public enum Visibility {
    VISIBLE,
    HIDDEN,
    VERY_HIDDEN
  }
}
