/**
 * Labels for coin holders, laid out on paper in true size as their owner measures them. May use
 * {@code fineweight.template}; knows nothing of coins.
 */
package fineweight.label;
