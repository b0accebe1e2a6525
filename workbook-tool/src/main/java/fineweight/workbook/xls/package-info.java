/**
 * Workbooks of Excel 97-2003, by way of POI's HSSF. An edit is made on a copy in memory, which is
 * compared with the file before it takes the file's place. The format keeps every number as a
 * {@code double}: this is one of the few packages where such a thing may occur. Depends on {@code
 * fineweight.workbook} and {@code fineweight.workbook.save}.
 */
package fineweight.workbook.xls;
