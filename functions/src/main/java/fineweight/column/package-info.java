/**
 * The columns of an inventory: what a collector's headings mean, and what we put beside them for
 * each row. Pure: knows no files. Depends on everything from {@code quantity} to {@code valuation}.
 */
package fineweight.column;
