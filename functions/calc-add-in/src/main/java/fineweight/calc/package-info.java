/**
 * The functions for cells inside LibreOffice: a thin layer between the office's types and the list
 * of functions. The office starts Java when a cell calls a function, not before.
 */
package fineweight.calc;
