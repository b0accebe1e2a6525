/**
 * Coin standards: what a coin is made of by law or by its mint, with the evidence for it, read from
 * the catalogue's own resource files. Depends on {@code quantity} and {@code metal}.
 */
package fineweight.standard;
