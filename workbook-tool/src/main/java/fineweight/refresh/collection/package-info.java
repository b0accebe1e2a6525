/** The inventory as a collection: its type set, what is for sale, and what is gone. */
package fineweight.refresh.collection;
