package fineweight.clue;

import fineweight.quantity.Mass;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What scale, calliper and magnet said, and the mass that the words name. Immutable.
 *
 * @param mass of one piece, weighed
 * @param diameterMillimetres measured
 * @param magnetic whether a magnet holds the piece
 * @param massInWater weighed hanging in water
 * @param statedOunces the troy ounces that the words name as the size of the piece, such as {@code
 *     1/2 oz}
 * @param statedMass the grams or kilograms that the words name, such as {@code 250 g bar}
 */
public record Measures(
    Optional<Clue<Mass>> mass,
    Optional<Clue<BigDecimal>> diameterMillimetres,
    Optional<Clue<Boolean>> magnetic,
    Optional<Clue<Mass>> massInWater,
    Optional<Clue<BigDecimal>> statedOunces,
    Optional<Clue<Mass>> statedMass) {}
