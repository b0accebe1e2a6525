/** Tests that nothing of an owner's is left in what he gives away. */
package fineweight.giveaway;
