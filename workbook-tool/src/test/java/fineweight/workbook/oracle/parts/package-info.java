/** Plain zip and plain XML, read for the tests alone. Depends on nothing but cell places. */
package fineweight.workbook.oracle.parts;
