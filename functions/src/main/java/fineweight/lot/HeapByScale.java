package fineweight.lot;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.Decimals;
import fineweight.quantity.Fineness;
import fineweight.quantity.Mass;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A heap of coins of one standard put on the scale together. What lies on the scale is there, worn
 * or not, so its metal needs no allowance for wear; the face, if it was counted, tells the wear.
 * Immutable.
 *
 * @param content the metal in the heap
 * @param struck what coins of that face weigh as struck, where the face was counted
 * @param wear the share lost by use, 0 to 1, where the face was counted and agrees with the scale
 * @param finding whether scale and face agree
 * @param sentence the figures in words
 */
public record HeapByScale(
    FineContent content,
    Optional<Mass> struck,
    Optional<BigDecimal> wear,
    Finding finding,
    String sentence) {
  /**
   * Up to half of one per cent above as struck is put down to the scale and the mint's tolerance.
   */
  private static final BigDecimal OVERWEIGHT = new BigDecimal("1.005");

  /** Coins worn slick may have lost five to ten per cent (common practice). */
  private static final BigDecimal SLICK = new BigDecimal("0.10");

  /** Whether scale and face agree. */
  public enum Finding {
    FACE_NOT_COUNTED,
    AGREE,
    TOO_HEAVY,
    TOO_LIGHT
  }

  /** Coins that lie in one heap: the same alloy, and mass in proportion to face. */
  public enum Kind {
    /**
     * Dimes, quarters, halves from 1873 on: 25 g to the dollar (Coinage Act of 1873, section 15).
     */
    US_90("United States 90 % silver", "900", "25"),
    /** Halves of 1965 to 1970: 11.5 g, 4.6 g of it silver (Coinage Act of 1965, section 101(a)). */
    US_40("United States 40 % silver halves", "400", "23"),
    /**
     * Wartime five cents: 5 g, 350 fine (the Mint's alloy under the Second War Powers Act of 1942,
     * title XII).
     */
    US_WARTIME_FIVE_CENTS("United States wartime five cents", "350", "100");

    private final String words;
    private final String silverPerMille;
    private final String gramsPerDollar;

    Kind(String words, String silver, String gramsPerDollar) {
      this.words = words;
      this.silverPerMille = silver;
      this.gramsPerDollar = gramsPerDollar;
    }

    public String words() {
      return words;
    }

    /** The share of silver in their alloy. */
    public Fineness silver() {
      return Fineness.ofPerMille(silverPerMille);
    }

    /** The mass of one dollar of face as struck. */
    public Mass perDollar() {
      return Mass.ofGrams(gramsPerDollar);
    }
  }

  public HeapByScale {
    Objects.requireNonNull(content, "content");
    Objects.requireNonNull(struck, "struck");
    Objects.requireNonNull(wear, "wear");
    Objects.requireNonNull(finding, "finding");
  }

  /**
   * Reckons a heap from its mass and, where it was counted, its face.
   *
   * @param weighed the mass on the scale, more than zero
   * @param faceDollars the face value, if it was counted, more than zero
   * @throws IllegalArgumentException if one of them is zero or negative
   */
  public static HeapByScale of(Kind kind, Mass weighed, Optional<BigDecimal> faceDollars) {
    if (weighed.isZero() || faceDollars.filter(face -> face.signum() <= 0).isPresent()) {
      throw new IllegalArgumentException("a heap has a mass and a face of more than zero");
    }
    FineContent content = new FineContent(Map.of(Metal.SILVER, kind.silver().of(weighed)));
    String start =
        weighed
            + " of "
            + kind.words
            + " hold "
            + round(content.troyOunces(Metal.SILVER), 4)
            + " ozt of silver";
    if (faceDollars.isEmpty()) {
      BigDecimal dollars = weighed.grams().divide(kind.perDollar().grams(), Decimals.DIVISION);
      return new HeapByScale(
          content,
          Optional.empty(),
          Optional.empty(),
          Finding.FACE_NOT_COUNTED,
          start
              + "; the face, not counted, is "
              + round(dollars, 2)
              + " dollars if unworn, more if worn");
    }
    return compared(content, weighed, kind.perDollar().times(faceDollars.get()), start);
  }

  private static HeapByScale compared(
      FineContent content, Mass weighed, Mass struck, String start) {
    BigDecimal ratio = weighed.grams().divide(struck.grams(), Decimals.DIVISION);
    BigDecimal lost = Decimals.normal(BigDecimal.ONE.subtract(ratio).max(BigDecimal.ZERO));
    boolean heavy = ratio.compareTo(OVERWEIGHT) > 0;
    if (heavy || lost.compareTo(SLICK) > 0) {
      return new HeapByScale(
          content,
          Optional.of(struck),
          Optional.empty(),
          heavy ? Finding.TOO_HEAVY : Finding.TOO_LIGHT,
          start + doubt(struck, heavy));
    }
    return new HeapByScale(
        content,
        Optional.of(struck),
        Optional.of(lost),
        Finding.AGREE,
        start
            + "; against its face it has lost "
            + round(lost.movePointRight(2), 2)
            + " % by wear");
  }

  private static String doubt(Mass struck, boolean heavy) {
    return heavy
        ? "; that face weighs only "
            + struck
            + " as struck: count it again, or look for dollars and strange pieces among it"
        : "; that face weighs "
            + struck
            + " as struck, more than wear explains: count it again, or look for clad pieces";
  }

  private static String round(BigDecimal value, int places) {
    return value.setScale(places, RoundingMode.HALF_UP).toPlainString();
  }
}
