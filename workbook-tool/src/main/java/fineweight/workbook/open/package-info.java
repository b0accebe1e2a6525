/**
 * Opens a file of whatever kind, told by its content, and is the one boundary where a failure of a
 * library becomes a refusal in plain words. Depends on the packages of the single formats.
 */
package fineweight.workbook.open;
