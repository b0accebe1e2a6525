/** Fetches prices over the network, when it is asked to. No other package opens a connection. */
package fineweight.feed;
