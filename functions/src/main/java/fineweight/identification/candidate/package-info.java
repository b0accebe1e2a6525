/** The standards of the catalogue prepared for comparison with what words say. */
package fineweight.identification.candidate;
