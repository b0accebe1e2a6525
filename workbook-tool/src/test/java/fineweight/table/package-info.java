/** Opening a lot at the table. */
package fineweight.table;
