/**
 * Refreshing an inventory: find it in the workbook, read its rows, let {@code functions} appraise
 * them, and say what shall stand in our columns and sheets. Knows workbooks only by their
 * interface.
 */
package fineweight.refresh;
