/**
 * Which formulas of a workbook look at which cells. Depends on POI's reading of formulas and on the
 * places of {@code fineweight.workbook}.
 */
package fineweight.workbook.xls.formula;
