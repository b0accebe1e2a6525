package fineweight.sheet.function;

import java.util.Objects;

/**
 * A parameter of a function. Immutable.
 *
 * @param name one word in lower case, as the reference and the office show it
 * @param unit what a number in it counts; empty for words
 * @param purpose one sentence without its stop
 * @param optional whether it may be left out
 */
public record Parameter(String name, String unit, String purpose, boolean optional) {
  public Parameter {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(purpose, "purpose");
  }

  public static Parameter needed(String name, String unit, String purpose) {
    return new Parameter(name, unit, purpose, false);
  }

  public static Parameter optional(String name, String unit, String purpose) {
    return new Parameter(name, unit, purpose, true);
  }

  /** The purpose, with the unit where there is one. */
  public String words() {
    return unit.isEmpty() ? purpose : purpose + " (" + unit + ")";
  }
}
