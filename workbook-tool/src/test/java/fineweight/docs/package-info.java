/** The documents: what they say of the program is compared with it. */
package fineweight.docs;
