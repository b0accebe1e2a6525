/** The command: options in, words out. Wires everything else together and is imported by nobody. */
package fineweight.tool;
