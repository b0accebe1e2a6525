/** Charts in sheets of our own, written as parts and known again. */
package fineweight.workbook.xlsx.chart;
