/**
 * The witness: compares a workbook before and after an edit and shares no code with the writer. All
 * differences that are allowed stand in one file, each with its reason.
 */
package fineweight.workbook.oracle;
