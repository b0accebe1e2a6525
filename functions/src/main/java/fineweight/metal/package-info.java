/**
 * Metals, alloys and what a piece of an alloy holds of each metal. Depends on {@code quantity}
 * only.
 */
package fineweight.metal;
