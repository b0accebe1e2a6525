/** One worksheet part: walked cell by cell, read, and rewritten by cutting at cell borders. */
package fineweight.workbook.xlsx.sheet;
