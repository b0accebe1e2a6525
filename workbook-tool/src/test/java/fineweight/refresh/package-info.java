/** Whole runs over invented inventories, read again by another library. */
package fineweight.refresh;
