package fineweight.sale;

import java.util.Locale;
import java.util.Optional;

/** Where a piece stands. */
public enum SaleState {
  UNSOLD("unsold"),
  SOLD("sold"),
  KEPT("kept"),
  /** Sent back to the seller for a refund. */
  RETURNED("returned"),
  /** Given for something else of an agreed value. */
  TRADED("traded");

  private final String word;

  SaleState(String word) {
    this.word = word;
  }

  /** The form for a cell. */
  public String word() {
    return word;
  }

  /** Whether the piece has left the collection. */
  public boolean isGone() {
    return this == SOLD || this == RETURNED || this == TRADED;
  }

  /** Reads the word of a state, in upper or lower case. */
  public static Optional<SaleState> read(String text) {
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    for (SaleState state : values()) {
      if (state.word.equals(wanted)) {
        return Optional.of(state);
      }
    }
    return Optional.empty();
  }
}
