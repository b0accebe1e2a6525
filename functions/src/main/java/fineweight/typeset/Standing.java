package fineweight.typeset;

import java.util.Objects;
import java.util.Optional;

/**
 * Where a row stands in a set, and what is proposed. Immutable.
 *
 * @param piece the row
 * @param place the place it is for; empty if open or not in the set
 * @param status what it does for the set
 * @param keep how many of the row to keep
 * @param sell how many to sell; keep and sell add up to the row's count where something is proposed
 * @param sentence the ground in words
 */
public record Standing(
    CollectedPiece piece,
    Optional<TypeEntry> place,
    TypeSetStatus status,
    int keep,
    int sell,
    String sentence) {
  /**
   * @throws IllegalArgumentException if keep and sell are negative or more than the row has
   */
  public Standing {
    Objects.requireNonNull(piece, "piece");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(status, "status");
    if (keep < 0 || sell < 0 || keep + sell > piece.count()) {
      throw new IllegalArgumentException(
          "keep " + keep + " and sell " + sell + " of " + piece.count());
    }
  }

  /** The proposal in words: keep, sell, {@code keep 1, sell 3}, or nothing. */
  public String proposal() {
    if (keep > 0 && sell > 0) {
      return "keep " + keep + ", sell " + sell;
    }
    return keep > 0 ? "keep" : sell > 0 ? "sell" : "";
  }
}
