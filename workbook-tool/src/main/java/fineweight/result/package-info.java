/** What a run came to, as data and as JSON for other programs. */
package fineweight.result;
