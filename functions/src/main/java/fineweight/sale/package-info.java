/**
 * Selling: what fees leave of a price, the least price that earns what is wanted, which pieces of a
 * row went where, and what was gained. Depends on {@code quantity} and {@code money}.
 */
package fineweight.sale;
