/** Prices from a real server on this machine. */
package fineweight.feed;
