package fineweight.valuation;

/** The ground that a worth stands on. */
public enum Basis {
  /** The collector wrote the worth of this very piece. */
  STATED("your figure"),
  /** The collector's own price list. */
  OWN_PRICE("your price list"),
  /** Metal at the payout. */
  METAL("metal"),
  /** Face value, where the piece is still money. */
  FACE("face value"),
  /** Nothing is known that gives it a worth. */
  NONE("nothing");

  private final String words;

  Basis(String words) {
    this.words = words;
  }

  /** The form for a person. */
  public String words() {
    return words;
  }
}
