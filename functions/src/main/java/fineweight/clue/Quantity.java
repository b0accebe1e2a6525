package fineweight.clue;

import java.math.BigDecimal;

/** How many pieces a row is about, as said. */
public sealed interface Quantity {
  /** Nothing is said: one piece. */
  Pieces ONE = new Pieces(1);

  /**
   * @param number more than zero
   */
  record Pieces(long number) implements Quantity {}

  /** Bank rolls; how many pieces are in one depends on the coin. */
  record Rolls(long number) implements Quantity {}

  /** Coins of so much face value together, in the main unit of the coin's currency. */
  record FaceValue(BigDecimal amount) implements Quantity {}

  /**
   * A count that cannot be taken.
   *
   * @param reason what is wrong with it
   */
  record Unusable(String reason) implements Quantity {}
}
