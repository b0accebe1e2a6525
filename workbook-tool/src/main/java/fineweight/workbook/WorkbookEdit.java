package fineweight.workbook;

import java.util.List;

/**
 * Everything that one run changes in a workbook.
 *
 * @param sheets columns put into existing sheets
 * @param drafts sheets of our own, whole
 * @param names defined names of ours to add; one with the same name is replaced
 * @param removals what of ours is taken out
 * @param rows rows put under lists; no sheet is named twice, nor in {@code sheets} too
 * @param recalculation formulas of the owner to calculate after all this
 */
public record WorkbookEdit(
    List<SheetEdit> sheets,
    List<SheetDraft> drafts,
    List<NamedCell> names,
    Removal removals,
    List<RowsEdit> rows,
    Recalculation recalculation) {
  public WorkbookEdit {
    rows = List.copyOf(rows);
    sheets = List.copyOf(sheets);
    drafts = List.copyOf(drafts);
    names = List.copyOf(names);
  }

  /** An edit that puts no rows under a list. */
  public WorkbookEdit(
      List<SheetEdit> sheets, List<SheetDraft> drafts, List<NamedCell> names, Removal removals) {
    this(sheets, drafts, names, removals, List.of(), Recalculation.NONE);
  }

  /** This edit, after which some formulas are calculated. */
  public WorkbookEdit with(Recalculation wanted) {
    return new WorkbookEdit(sheets, drafts, names, removals, rows, wanted);
  }

  /** An edit that does nothing else. */
  public static WorkbookEdit of(RowsEdit rows) {
    return new WorkbookEdit(
        List.of(), List.of(), List.of(), Removal.NOTHING, List.of(rows), Recalculation.NONE);
  }

  /**
   * What is taken out again. A column at the right end of its sheet is removed with its width; one
   * that has foreign cells to its right is only emptied, so that nothing of the owner's moves.
   *
   * @param columns our columns, header included
   * @param sheets names of our sheets
   * @param names defined names of ours
   */
  public record Removal(List<ColumnPlace> columns, List<String> sheets, List<String> names) {
    public static final Removal NOTHING = new Removal(List.of(), List.of(), List.of());

    public Removal {
      columns = List.copyOf(columns);
      sheets = List.copyOf(sheets);
      names = List.copyOf(names);
    }
  }

  /**
   * @param headerRow from 0
   * @param column from 0
   */
  public record ColumnPlace(String sheet, int headerRow, int column) {}
}
