/**
 * A collector's file in the words of its owner: sheets, cells, columns that are put in. The
 * packages below it know the single formats; nothing else in the program does. Depends on nothing
 * else of the project.
 */
package fineweight.workbook;
