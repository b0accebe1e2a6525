package fineweight.identification;

import fineweight.clue.Clue;
import fineweight.clue.Clues;
import fineweight.clue.Denomination;
import fineweight.clue.FieldRole;
import fineweight.clue.Quantity;
import fineweight.identification.candidate.Pool;
import fineweight.identification.candidate.When;
import java.util.List;
import java.util.Optional;

/** "3 gulden 1958": three coins of one gulden, where no coin of three was struck. */
final class CountedUnits {
  private CountedUnits() {}

  /** The clues with the number as a count; empty if the number is a part of the denomination. */
  static Optional<Clues> of(Clues clues, Pool pool, When when) {
    boolean one =
        clues.denominations().size() == 1
            && clues.denominations().get(0).from() == FieldRole.DESCRIPTION
            && clues.quantity().value().equals(Quantity.ONE);
    if (!one) {
      return Optional.empty();
    }
    Clue<Denomination> said = clues.denominations().get(0);
    Optional<Denomination.Counted> counted = said.value().orCounted();
    if (counted.isEmpty() || pool.has(clues, when)) {
      return Optional.empty();
    }
    Denomination unit =
        new Denomination(counted.get().faces(), said.value().countries(), Optional.empty());
    Clues asCount =
        clues
            .withDenominations(List.of(new Clue<>(unit, said.words(), said.from())))
            .withQuantity(
                new Clue<>(new Quantity.Pieces(counted.get().pieces()), said.words(), said.from()));
    return pool.has(asCount, when) ? Optional.of(asCount) : Optional.empty();
  }

  static String remark(Clues before, Clues after) {
    long pieces = ((Quantity.Pieces) after.quantity().value()).number();
    return "\""
        + before.denominations().get(0).words()
        + "\" is read as "
        + pieces
        + " coins: the catalogue has no single coin of that value";
  }
}
