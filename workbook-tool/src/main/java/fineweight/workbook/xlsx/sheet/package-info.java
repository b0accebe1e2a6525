/** One worksheet part: walked cell by cell, read, compared with what it shall hold. */
package fineweight.workbook.xlsx.sheet;
