/**
 * The words collectors use and what they mean, read from resource files beside this package:
 * countries, units, coins, types, metals, marks, grades. Depends on {@code clue.word}, {@code
 * quantity} and {@code metal}.
 */
package fineweight.clue.lexicon;
