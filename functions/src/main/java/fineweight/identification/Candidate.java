package fineweight.identification;

import fineweight.metal.FineContent;
import fineweight.standard.CoinStandard;

/**
 * A standard that the words leave open. Immutable.
 *
 * @param answer what a person answers to the question if the coin is this one
 */
public record Candidate(CoinStandard standard, String answer) {
  public FineContent content() {
    return standard.fineContent();
  }
}
