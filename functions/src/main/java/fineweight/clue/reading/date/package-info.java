/** Reads dates as people write them. */
package fineweight.clue.reading.date;
