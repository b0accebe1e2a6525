/**
 * The zip container of a workbook: opened with distrust, copied entry by entry as compressed bytes.
 */
package fineweight.workbook.xlsx.zip;
