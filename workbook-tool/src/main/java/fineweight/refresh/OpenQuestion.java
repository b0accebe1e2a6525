package fineweight.refresh;

import java.util.List;

/**
 * A row that needs a person, as the review sheet has it. Immutable.
 *
 * @param piece the number of the piece
 * @param row its row, for a person
 * @param words what stands in the row
 * @param question what settles it, or the reason why nothing is known
 * @param choices the possible answers; empty if there is nothing to choose from
 */
public record OpenQuestion(
    String piece, String row, String words, String question, List<Choice> choices) {
  /**
   * @param words the answer and what the row is worth by it
   * @param standardId the standard it means
   */
  public record Choice(String words, String standardId) {}

  public OpenQuestion {
    choices = List.copyOf(choices);
  }
}
