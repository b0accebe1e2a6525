/**
 * The parts of a workbook package beside its sheets and styles: types, relationships, the workbook
 * itself, texts, tables.
 */
package fineweight.workbook.xlsx.part;
