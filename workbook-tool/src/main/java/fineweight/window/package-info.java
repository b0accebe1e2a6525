/**
 * A window for those who do not work in a terminal: drop a workbook, see what was understood and
 * what will change, type prices, fill the sheet. Does what the command {@code refresh} does,
 * through the same code. Uses {@code refresh}, {@code settings} and the interface of {@code
 * workbook}; Swing stays in this package.
 */
package fineweight.window;
