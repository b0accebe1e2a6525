/**
 * The one list of functions that a cell of a spreadsheet can call, from which every host, the
 * descriptions in an office and the reference page are made.
 */
package fineweight.sheet;
