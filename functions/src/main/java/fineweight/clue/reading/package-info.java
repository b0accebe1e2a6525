/**
 * Reads the fields of a row into clues. Depends on {@code clue}, its word lists and {@code
 * quantity}.
 */
package fineweight.clue.reading;
