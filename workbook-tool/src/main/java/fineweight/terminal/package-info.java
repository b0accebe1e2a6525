/**
 * The terminal at the other end: what it is, what it can show, and the line that tells progress.
 */
package fineweight.terminal;
