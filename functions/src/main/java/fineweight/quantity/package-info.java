/**
 * Exact physical quantities: mass and fineness as decimals, never as floating point. Depends on
 * nothing else of the project.
 */
package fineweight.quantity;
