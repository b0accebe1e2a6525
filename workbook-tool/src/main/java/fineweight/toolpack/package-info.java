/**
 * The functions for cells, evaluated without an office: in .xlsx and .xls through the workbook
 * model's own evaluator. The one place beside the .xls adapter where numbers are floating point,
 * because cells hold them so. May use {@code fineweight.workbook} and the functions.
 */
package fineweight.toolpack;
