/** A field of a row cut into words, with the phrases of the word lists found in it. */
package fineweight.clue.passage;
