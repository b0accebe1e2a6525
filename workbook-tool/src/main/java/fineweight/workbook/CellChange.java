package fineweight.workbook;

/**
 * One cell that an edit changes: the dry run's line.
 *
 * @param before as the cell shows itself; empty for a blank or absent cell. A formula begins with
 *     {@code =}
 * @param after in the same form
 */
public record CellChange(CellPlace place, String before, String after) {}
