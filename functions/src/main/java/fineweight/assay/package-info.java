/**
 * What scale and water say about a metal: the density of alloys and what a mint let pass. Hints to
 * look closer, never a verdict on a piece.
 */
package fineweight.assay;
