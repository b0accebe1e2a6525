package fineweight.identification;

import fineweight.clue.Clues;

/**
 * What a row is about. Immutable.
 *
 * @param clues the clues as they were understood in the end: "3 gulden" may have become three coins
 *     of one gulden
 */
public record Answer(Clues clues, Identification identification) {}
