package fineweight.identification;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.Fineness;
import fineweight.quantity.Mass;
import fineweight.standard.CoinStandard;
import java.util.List;

/** The answer to "what is it?". Never a silent guess. */
public sealed interface Identification {
  Reasons reasons();

  /** The words leave a single standard open. */
  record OneStandard(CoinStandard standard, Reasons reasons) implements Identification {
    public FineContent content() {
      return standard.fineContent();
    }
  }

  /**
   * The words leave several standards open that differ in metal.
   *
   * @param candidates in the order of the catalogue, at least two
   * @param question what settles it, for a person with the coin in hand
   */
  record SeveralStandards(List<Candidate> candidates, String question, Reasons reasons)
      implements Identification {
    public SeveralStandards {
      candidates = List.copyOf(candidates);
      if (candidates.size() < 2) {
        throw new IllegalArgumentException("several standards are two at least");
      }
    }
  }

  /**
   * A round, bar or medal whose metal, fineness and mass stand in the words: computed from them and
   * marked so.
   *
   * @param gross the whole mass of one piece
   * @param words the words it rests on
   */
  record AsStated(
      Metal metal,
      Fineness fineness,
      Mass gross,
      FineContent content,
      String words,
      Reasons reasons)
      implements Identification {}

  /**
   * No standard, so no figure.
   *
   * @param reason in one sentence
   */
  record NoStandard(Kind kind, String reason, Reasons reasons) implements Identification {
    /** Why there is none. */
    public enum Kind {
      /** Not recognised, contradictory or not in the catalogue. */
      NOT_KNOWN,
      /**
       * Not a thing that is valued by its metal: a copy, a plated piece, paper, an ancient coin.
       */
      NOT_BY_METAL
    }
  }
}
