/** Cell formats: read for dates, and added to without touching an existing one. */
package fineweight.workbook.xlsx.style;
