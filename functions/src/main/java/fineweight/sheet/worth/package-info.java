/**
 * Functions that say what coins are worth: melt, worth and its basis, totals, shares of a cost and
 * the break-even spot. Amounts are numbers without a currency, of two decimal places. Depends on
 * {@code sheet.coin}, {@code valuation} and {@code lot}.
 */
package fineweight.sheet.worth;
