/** The window, opened for real on a screen that exists in memory only. */
package fineweight.window;
