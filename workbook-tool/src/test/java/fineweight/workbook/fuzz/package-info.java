/**
 * Sound files spoiled at random: what comes out is a refusal or a result that the oracle accepts,
 * never anything else. Every case can be had again by its seed.
 */
package fineweight.workbook.fuzz;
