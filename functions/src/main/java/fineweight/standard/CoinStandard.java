package fineweight.standard;

import fineweight.metal.FineContent;
import java.util.Objects;

/**
 * One standard of the catalogue: coins of one issue with one alloy and one mass. Immutable.
 *
 * @param id the key of the row, letters a to z, digits and hyphens
 */
public record CoinStandard(
    String id,
    Issue issue,
    Distinction distinction,
    Specification specification,
    Evidence evidence) {
  /**
   * @throws IllegalArgumentException if the id holds other characters
   */
  public CoinStandard {
    Objects.requireNonNull(issue, "issue");
    Objects.requireNonNull(distinction, "distinction");
    Objects.requireNonNull(specification, "specification");
    Objects.requireNonNull(evidence, "evidence");
    if (!id.matches("[a-z0-9][a-zA-Z0-9-]*")) {
      throw new IllegalArgumentException(
          "\"" + id + "\" is no id; expected letters, digits and hyphens");
    }
  }

  /** The mass of each metal in one piece as struck. */
  public FineContent fineContent() {
    return specification.fineContent();
  }
}
