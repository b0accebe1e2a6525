/** Rules that hold for the whole module. */
package fineweight.architecture;
