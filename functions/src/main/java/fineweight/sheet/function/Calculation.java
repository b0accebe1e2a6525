package fineweight.sheet.function;

/** How a function gets from what is given to what comes back. */
@FunctionalInterface
public interface Calculation {
  /**
   * @throws IllegalArgumentException if something given cannot be used; the message is shown in the
   *     cell
   */
  Outcome of(Given given);
}
