/** What a new workbook looks like: generated, so that it is the same wherever it is made. */
package fineweight.template;
