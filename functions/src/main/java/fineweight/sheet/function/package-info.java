/**
 * What a function of a spreadsheet is, whatever program calls it: its name, its parameters, what
 * comes in from cells and what goes back to them. Depends on {@code quantity} only.
 */
package fineweight.sheet.function;
