package fineweight.column;

import fineweight.clue.Clues;
import fineweight.identification.Identification;
import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.Fineness;
import fineweight.quantity.Mass;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What was found out about one row. Immutable.
 *
 * @param pieces how many; empty if that is not known
 * @param identification what it is
 * @param figures of one piece; with several standards those of the lowest
 * @param most the content of one piece by the highest of several standards; the same as the
 *     figures' otherwise
 * @param notes sentences for the note
 */
public record Appraisal(
    Clues clues,
    RowState state,
    Optional<Long> pieces,
    Identification identification,
    Figures figures,
    FineContent most,
    List<String> notes) {
  public Appraisal {
    notes = List.copyOf(notes);
  }

  /**
   * The figures of one piece.
   *
   * @param standardId the key of the standard; empty if there is none
   * @param metal in words; empty if not known
   * @param fineness of the main precious metal
   * @param gross the whole mass
   * @param content what it holds
   * @param ground what the figures rest on: locator, sources, certainty
   * @param fromMemory whether the standard's figures rest on no text
   */
  public record Figures(
      String standardId,
      String metal,
      Optional<Fineness> fineness,
      Optional<Mass> gross,
      FineContent content,
      String ground,
      boolean fromMemory) {
    static final Figures NONE =
        new Figures("", "", Optional.empty(), Optional.empty(), FineContent.NONE, "", false);
  }

  /** The same pieces in another number. */
  public Appraisal withPieces(long number) {
    return new Appraisal(clues, state, Optional.of(number), identification, figures, most, notes);
  }

  /**
   * Fine troy ounces of the whole row, unrounded; empty if the row has no such metal or its count
   * is not known.
   */
  public Optional<BigDecimal> ounces(Metal metal) {
    BigDecimal each = figures.content().troyOunces(metal);
    return each.signum() == 0
        ? Optional.empty()
        : pieces.map(number -> each.multiply(BigDecimal.valueOf(number)));
  }

  /** The content of the whole row; nothing if the count is not known. */
  public FineContent content() {
    return pieces
        .map(number -> figures.content().times(BigDecimal.valueOf(number)))
        .orElse(FineContent.NONE);
  }

  /** The content of the whole row by the highest of several standards. */
  public FineContent mostContent() {
    return pieces.map(number -> most.times(BigDecimal.valueOf(number))).orElse(FineContent.NONE);
  }
}
