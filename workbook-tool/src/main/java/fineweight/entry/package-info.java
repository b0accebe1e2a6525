/**
 * Rows of an inventory made from what a person types or asks for: which of the sheet's own columns
 * take what. Depends on {@code functions}, {@code workbook} and the reading of inventories; writes
 * nothing itself.
 */
package fineweight.entry;
