/** Damaged, misleading and malicious files, each in a process of its own with little memory. */
package fineweight.workbook.hostile;
