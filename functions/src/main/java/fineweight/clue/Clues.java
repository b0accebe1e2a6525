package fineweight.clue;

import java.util.List;
import java.util.Optional;

/**
 * Everything that the words of one row say about the coin. Immutable.
 *
 * @param country if one is said
 * @param denominations what is said of it; a coin must fit all
 * @param types everyday type names
 * @param dating the date
 * @param mint the mint mark in capitals; empty text if the words say that there is none
 * @param physical metal and measures
 * @param condition grade and remarks
 * @param quantity how many pieces
 * @param wording the words themselves, for tells and for what was not understood
 */
public record Clues(
    Optional<Clue<Issuers>> country,
    List<Clue<Denomination>> denominations,
    List<Clue<TypeName>> types,
    Dating dating,
    Optional<Clue<String>> mint,
    Physical physical,
    Condition condition,
    Clue<Quantity> quantity,
    Wording wording) {
  public Clues {
    denominations = List.copyOf(denominations);
    types = List.copyOf(types);
  }

  /** The same with other denominations. */
  public Clues withDenominations(List<Clue<Denomination>> others) {
    return new Clues(country, others, types, dating, mint, physical, condition, quantity, wording);
  }

  /** The same with another quantity. */
  public Clues withQuantity(Clue<Quantity> other) {
    return new Clues(
        country, denominations, types, dating, mint, physical, condition, other, wording);
  }

  /** The same as if no metal had been said. */
  public Clues withoutMetal() {
    Physical measured =
        new Physical(new MetalWords(List.of(), List.of(), Optional.empty()), physical.measures());
    return new Clues(
        country, denominations, types, dating, mint, measured, condition, quantity, wording);
  }

  /** Metal and measures. */
  public record Physical(MetalWords metal, Measures measures) {}
}
