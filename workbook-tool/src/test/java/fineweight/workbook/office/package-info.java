/**
 * A real office without a screen as second reader: what it opens, calculates and prints. Tests skip
 * where it is not installed, unless {@code -Dfineweight.must.office=true}.
 */
package fineweight.workbook.office;
