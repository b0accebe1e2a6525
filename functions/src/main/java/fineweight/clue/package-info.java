/**
 * What the words of a row say, before anything is looked up: country, denomination, dates, mint
 * mark, metals, measures, remarks, each with the words it came from. Depends on {@code quantity},
 * {@code metal} and its own sub-packages.
 */
package fineweight.clue;
