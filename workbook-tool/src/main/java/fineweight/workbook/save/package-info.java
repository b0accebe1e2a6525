/**
 * Puts a new content in the place of a file in one step, keeps the former one as a numbered backup,
 * and brings a backup back. Knows nothing of workbooks; depends on {@code fineweight.workbook} only
 * for the words of a refusal.
 */
package fineweight.workbook.save;
