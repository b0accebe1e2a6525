/**
 * Judges what the command has put into an inventory against a table of answers by another hand.
 * Reads the filled files with Apache POI and as plain text, never with the program's own readers.
 */
package fineweight.tool.judge;
