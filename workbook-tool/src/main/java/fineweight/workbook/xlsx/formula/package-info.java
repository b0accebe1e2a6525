/**
 * What the owner's formulas look at: enough to know which stored results are no longer true, and no
 * more. Nothing is calculated.
 */
package fineweight.workbook.xlsx.formula;
