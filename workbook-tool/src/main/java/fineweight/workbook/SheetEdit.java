package fineweight.workbook;

import java.util.List;

/**
 * Columns to put into an existing sheet.
 *
 * @param sheet the sheet's name
 * @param headerRow from 0
 * @param firstRow the first data row, from 0
 * @param lastRow the last data row, from 0, counted in
 * @param columns ascending by column, none twice
 */
public record SheetEdit(
    String sheet, int headerRow, int firstRow, int lastRow, List<ColumnEdit> columns) {
  public SheetEdit {
    columns = List.copyOf(columns);
  }
}
