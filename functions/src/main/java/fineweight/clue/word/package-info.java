/** Text cut into comparable words with their places. Depends on nothing else of the project. */
package fineweight.clue.word;
