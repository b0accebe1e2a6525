/** The table of cases that every host of the functions must pass, and how it is read. */
package fineweight.sheet.cases;
