package fineweight.label;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The paper that labels are printed on. Immutable.
 *
 * @param size in millimetres, as it is fed
 * @param code the number that the file format has for it (ECMA-376 part 1, 18.3.1.63); empty for a
 *     size of the user's own
 * @param landscape whether the longer side of a paper with a code lies across
 */
public record Paper(Extent size, OptionalInt code, boolean landscape) {
  /** ISO 216 for the A sizes; ANSI/ASME Y14.1 for letter; legal is common practice. */
  private static final Map<String, Paper> KNOWN =
      Map.of(
          "a4", known("210", "297", 9),
          "a5", known("148", "210", 11),
          "a6", known("105", "148", 70),
          "letter", known("215.9", "279.4", 1),
          "legal", known("215.9", "355.6", 5));

  public static final Paper A4 = KNOWN.get("a4");

  public Paper {
    Objects.requireNonNull(size, "size");
    Objects.requireNonNull(code, "code");
    if (size.width().signum() == 0 || size.height().signum() == 0) {
      throw new IllegalArgumentException("the paper has a width and a height above zero");
    }
  }

  private static Paper known(String width, String height, int code) {
    return new Paper(
        new Extent(new BigDecimal(width), new BigDecimal(height)), OptionalInt.of(code), false);
  }

  /** Reads a name such as A4 or letter, or a size such as 62x100; empty if it is neither. */
  public static Optional<Paper> read(String words) {
    Paper known = KNOWN.get(words.strip().toLowerCase(Locale.ROOT));
    return known != null
        ? Optional.of(known)
        : Extent.read(words)
            .filter(size -> size.width().signum() > 0 && size.height().signum() > 0)
            .map(size -> new Paper(size, OptionalInt.empty(), false));
  }

  /** The same paper fed with its other side first. */
  public Paper turned() {
    return new Paper(size.turned(), code, code.isPresent() && !landscape);
  }
}
