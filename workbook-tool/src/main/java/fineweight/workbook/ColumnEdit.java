package fineweight.workbook;

import java.util.function.IntFunction;

/**
 * One column of a sheet as it shall be: the header cell and the cells below it. Cells of other rows
 * stay as they are.
 *
 * @param column from 0. A column at or beyond the sheet's used width is new; another must be one of
 *     ours (the caller knows by the hidden names), and its old content is replaced
 * @param header the header's text; null leaves the header cell alone
 * @param look the number format of the cells below the header; the rest of the look is the
 *     neighbouring column's
 * @param width in characters for a new column; 0 for the sheet's default
 * @param cells the content for a row (from 0) between the edit's first and last row; null leaves
 *     the cell of that row as it is. Called for each row once, in ascending order, possibly again
 *     for a second pass: it must give the same answer
 */
public record ColumnEdit(
    int column, String header, CellLook look, double width, IntFunction<CellContent> cells) {}
