/**
 * Whether a workbook is built as the standard wants it: order of elements, counts, indexes, names
 * and numbers. Offices forgive some mistakes and repair others; here none passes.
 */
package fineweight.workbook.validity;
