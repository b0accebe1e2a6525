/**
 * How well a piece is preserved: the 1 to 70 scale, certified or raw, damaged or sound. Depends on
 * nothing else of the project.
 */
package fineweight.grade;
