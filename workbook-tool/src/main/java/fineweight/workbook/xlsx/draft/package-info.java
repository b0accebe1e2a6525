/** Whole sheets of our own, written as parts. */
package fineweight.workbook.xlsx.draft;
