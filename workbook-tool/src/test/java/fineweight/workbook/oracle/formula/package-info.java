/** What formulas refer to and which of them depend on changed cells, found for the tests alone. */
package fineweight.workbook.oracle.formula;
