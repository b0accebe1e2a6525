/** What the rows read come to: spot prices, worth, lots, sums. */
package fineweight.refresh.worth;
