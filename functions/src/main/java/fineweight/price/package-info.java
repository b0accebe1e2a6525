/**
 * The collector's own prices: his list by type, date, mint and grade, quotes as times face, and the
 * rates between currencies. No price is ever invented here. Depends on {@code quantity}, {@code
 * metal}, {@code standard}, {@code spot}, {@code money}, {@code grade} and {@code valuation}.
 */
package fineweight.price;
