/**
 * What a piece is worth and on what ground: the collector's own price, its metal at a payout, or
 * its face value. Depends on {@code quantity}, {@code metal}, {@code spot}, {@code money} and
 * {@code grade}.
 */
package fineweight.valuation;
