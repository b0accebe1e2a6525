/**
 * Puts columns into one worksheet part by cutting its bytes at cell borders; what lies between the
 * cuts is copied.
 */
package fineweight.workbook.xlsx.splice;
