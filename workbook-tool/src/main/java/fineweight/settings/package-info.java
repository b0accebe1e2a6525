/**
 * What a run is told from outside: prices as options or in a file. Depends on {@code spot} only.
 */
package fineweight.settings;
