/**
 * XML as found: a safe streaming parser, a light tree with byte offsets, and edits that copy every
 * byte they do not mean to change.
 */
package fineweight.workbook.xlsx.xml;
