/**
 * Functions that say what a sale brings, what it must bring, and what a piece does for a set.
 * Amounts are numbers without a currency, of two decimal places. Depends on {@code sale}, {@code
 * typeset} and {@code sheet.coin}.
 */
package fineweight.sheet.sale;
