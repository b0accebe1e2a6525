/**
 * Functions that say what a coin is and what it holds. A coin is given in words, by the parts of a
 * row, or by the id of its standard. Depends on {@code column} for the reading.
 */
package fineweight.sheet.coin;
