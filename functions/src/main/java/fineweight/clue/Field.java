package fineweight.clue;

import java.util.Objects;

/**
 * A field of a row as its owner wrote it. Immutable.
 *
 * @param text not blank fields only; numbers in plain decimal notation
 */
public record Field(FieldRole role, String text) {
  public Field {
    Objects.requireNonNull(role, "role");
    Objects.requireNonNull(text, "text");
  }
}
