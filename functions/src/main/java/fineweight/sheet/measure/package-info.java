/**
 * Functions about what a scale shows: mass against the standard, the density of an alloy, and units
 * of mass. Depends on {@code quantity}, {@code metal} and {@code sheet.coin}.
 */
package fineweight.sheet.measure;
