package fineweight.valuation;

/** What damage does to a price from the collector's list. */
public enum DamageRule {
  /** A listed price is for sound pieces; a damaged one is worth its metal or its face. */
  LOWERS_TO_METAL,
  /** The collector said that his list counts for this piece all the same. */
  LIST_COUNTS
}
