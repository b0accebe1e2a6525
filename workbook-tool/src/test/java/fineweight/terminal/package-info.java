/** Terminals: real ones, made by a pseudo-terminal, and none. */
package fineweight.terminal;
