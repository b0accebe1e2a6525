/**
 * From clues to a standard: one, several with the question that settles it, or none with the
 * reason. Depends on {@code clue}, {@code standard}, {@code metal} and {@code quantity}.
 */
package fineweight.identification;
