/** The sheets of our own that a run puts into the workbook. */
package fineweight.refresh.sheet;
