/**
 * Excel workbooks (.xlsx, .xlsm) edited by patching the package: what is not ours is copied byte
 * for byte. {@link fineweight.workbook.xlsx.XlsxWorkbook} is the one entry.
 */
package fineweight.workbook.xlsx;
