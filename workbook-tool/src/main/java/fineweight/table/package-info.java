/**
 * Opening a lot at the table: pieces typed one by one, told what they are, kept safe at once.
 * Depends on {@code functions} and the reckoning of {@code refresh}; knows no options.
 */
package fineweight.table;
