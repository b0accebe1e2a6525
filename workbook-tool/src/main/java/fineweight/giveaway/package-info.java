/**
 * Makes an empty workbook from a collector's own, to give away. A new package is built and only
 * what is listed as harmless is put into it; nothing is deleted from a copy. What stays: what the
 * open standard's schema holds to a number, a yes or no, or one of a fixed list of words, and the
 * few free texts that {@link fineweight.giveaway.KeptWords}, {@link
 * fineweight.giveaway.FormulaRules} and {@link fineweight.giveaway.LookRules} let through. May use
 * the packages of workbooks, {@code fineweight.refresh} and the word lists of {@code functions}.
 */
package fineweight.giveaway;
