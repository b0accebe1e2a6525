/** Narrows the standards left open by what the words, the scale and the magnet say. */
package fineweight.identification.weighing;
