/**
 * A set that a collector fills, by type or by date and mint: what each piece does for it, what to
 * keep and what to sell, and what is still missing. The list of a set is data. Depends on {@code
 * metal}, {@code standard}, {@code spot} and {@code grade}.
 */
package fineweight.typeset;
