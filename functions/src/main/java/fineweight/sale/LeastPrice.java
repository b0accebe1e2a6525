package fineweight.sale;

import fineweight.money.Gain;
import java.util.Objects;

/**
 * The lowest price that earns what is wanted. Immutable.
 *
 * @param proceeds the sale at that price
 * @param gain its net against the cost
 * @param sentence the answer in words, with a caution where a higher price would bring too little
 */
public record LeastPrice(Proceeds proceeds, Gain gain, String sentence) {
  public LeastPrice {
    Objects.requireNonNull(proceeds, "proceeds");
    Objects.requireNonNull(gain, "gain");
    Objects.requireNonNull(sentence, "sentence");
  }
}
