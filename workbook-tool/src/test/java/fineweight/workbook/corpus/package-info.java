/**
 * The real engine on workbooks made by others: filled, compared, filled again, emptied again. The
 * files lie beside the checkout; the tests say so and skip where they are absent.
 */
package fineweight.workbook.corpus;
