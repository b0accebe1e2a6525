/**
 * Rules for amounts of money that every figure obeys: where and how they are rounded, and how an
 * amount is split so that nothing is lost. The amounts themselves are joda-money's. Depends on
 * {@code quantity} only.
 */
package fineweight.money;
