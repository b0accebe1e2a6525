package fineweight.clue.lexicon;

import fineweight.quantity.Decimals;
import java.math.BigDecimal;

/** What a coin says it is: an amount of a unit, or a name. */
public sealed interface Face {
  /**
   * @param amount more than zero, trailing zeros removed
   * @param unit the canonical singular form
   */
  record Amount(BigDecimal amount, String unit) implements Face {
    public Amount {
      amount = Decimals.normal(amount);
    }
  }

  /**
   * @param name a denomination of the catalogue in comparable form
   */
  record Name(String name) implements Face {}
}
