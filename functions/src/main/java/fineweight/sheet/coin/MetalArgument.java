package fineweight.sheet.coin;

import fineweight.metal.Metal;
import fineweight.sheet.function.Given;
import fineweight.sheet.function.Parameter;
import fineweight.sheet.function.UnusableArgument;
import java.util.Locale;
import java.util.Optional;

/**
 * The metal that an argument names: by its English word, its element symbol or its ISO 4217 code.
 */
public final class MetalArgument {
  public static final Parameter METAL =
      Parameter.needed("metal", "", "The metal: silver, Ag or XAG");

  private MetalArgument() {}

  /** The metal of a word or code. */
  public static Optional<Metal> of(String words) {
    String plain = words.strip().toLowerCase(Locale.ROOT);
    for (Metal metal : Metal.values()) {
      if (metal.word().equals(plain) || (plain.equals("aluminum") && metal == Metal.ALUMINIUM)) {
        return Optional.of(metal);
      }
    }
    return Metal.ofCode(words);
  }

  /**
   * @throws UnusableArgument if the argument names no metal
   */
  public static Metal of(Given given) {
    String words = given.words("metal");
    return of(words)
        .orElseThrow(
            () ->
                new UnusableArgument(
                    "metal",
                    "expected a metal such as silver or XAU, found \""
                        + Given.shortened(words)
                        + "\""));
  }
}
