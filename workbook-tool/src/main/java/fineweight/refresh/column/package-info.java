/** What stands in our columns beside the inventory. */
package fineweight.refresh.column;
