package fineweight.sheet.coin;

import fineweight.clue.Clues;
import fineweight.column.Appraisal.Figures;
import fineweight.column.RowState;
import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.standard.CoinStandard;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What the words of a call leave of a coin. Immutable.
 *
 * @param state how far it is known
 * @param pieces how many; empty if that is not known
 * @param possible the figures of each standard it may be of; none where it is not known, or where
 *     nothing of it is valued by its metal
 * @param standards the same as standards; none for a piece reckoned from its own words
 * @param clues what the words say; empty where an id was given
 * @param remark the question where several are possible, else why there is no figure; empty where
 *     nothing is open
 */
public record Coin(
    RowState state,
    Optional<Long> pieces,
    List<Figures> possible,
    List<CoinStandard> standards,
    Optional<Clues> clues,
    String remark) {
  /** More pieces than any heap holds; keeps every product within range. */
  static final long MOST_PIECES = 1_000_000_000;

  public Coin {
    possible = List.copyOf(possible);
    standards = List.copyOf(standards);
    pieces = pieces.filter(number -> number <= MOST_PIECES);
  }

  /** What one piece may hold, one for each standard that is possible. */
  public List<FineContent> contents() {
    return possible.stream().map(Figures::content).toList();
  }

  /** The least that one piece may hold of a metal, in grams. */
  Optional<BigDecimal> leastGrams(Metal metal) {
    return contents().stream().map(content -> content.of(metal).grams()).min(BigDecimal::compareTo);
  }

  /** The least that one piece may hold of a metal, in troy ounces. */
  Optional<BigDecimal> leastOunces(Metal metal) {
    return contents().stream().map(content -> content.troyOunces(metal)).min(BigDecimal::compareTo);
  }
}
