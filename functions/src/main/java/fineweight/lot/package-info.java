/**
 * Pieces bought together at one price: what the lot cost, how the cost is shared, when it has paid
 * for itself, and what may be bid for one. Depends on {@code quantity}, {@code metal}, {@code
 * spot}, {@code money} and {@code valuation}.
 */
package fineweight.lot;
