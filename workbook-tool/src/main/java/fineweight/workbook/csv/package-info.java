/**
 * Text tables: comma, semicolon, tab or bar between the fields. FastCSV says where records and
 * fields are; the file's own text is copied between the cuts, so that a line that is not edited
 * keeps its bytes. Depends on {@code fineweight.workbook} and {@code fineweight.workbook.save}.
 */
package fineweight.workbook.csv;
