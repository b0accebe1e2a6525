/**
 * Finding the inventory in a workbook and reading it: headings, rows, numbers, answers, and the
 * marks by which we know what is ours.
 */
package fineweight.refresh.inventory;
