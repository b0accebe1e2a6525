/** Prices of metals on one day in one currency. Depends on {@code quantity} and {@code metal}. */
package fineweight.spot;
