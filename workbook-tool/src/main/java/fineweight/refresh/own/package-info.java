/**
 * Lists of the collector's own, each a sheet of his workbook or a file beside it: prices, payouts,
 * exchange rates, and the places of a set. A line that cannot be used is left out and named.
 */
package fineweight.refresh.own;
