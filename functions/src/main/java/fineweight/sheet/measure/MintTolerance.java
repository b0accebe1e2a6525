package fineweight.sheet.measure;

import fineweight.metal.Metal;
import fineweight.quantity.Mass;
import fineweight.standard.CoinStandard;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * How far a coin of the United States might miss its standard when it left the mint: Act of 18
 * January 1837, section 25 (5 Stat. 140); Coinage Act of 1873, sections 36 to 38 (17 Stat. 430), of
 * which the grains for five cents and one cent stand in 31 U.S.C. 5113(a) as 0.194 g and 0.13 g.
 * The tolerances of other mints are not known here.
 */
final class MintTolerance {
  private static final int LAW_OF_1873 = 1873;

  private MintTolerance() {}

  /**
   * The tolerance of one piece, plus and minus.
   *
   * @return empty for coins of other countries, of before 1837, and without a fixed face value
   */
  static Optional<Mass> of(CoinStandard standard) {
    Optional<BigDecimal> face = standard.issue().faceValue();
    boolean bullion = standard.issue().denomination().contains("oz");
    int first = standard.issue().years().ranges().get(0).first();
    if (!standard.issue().country().equals("US") || face.isEmpty() || bullion || first < 1837) {
      return Optional.empty();
    }
    Optional<Metal> metal = standard.specification().composition().mainPreciousMetal();
    BigDecimal cents = face.get().movePointRight(2);
    String grains =
        metal.filter(Metal.GOLD::equals).isPresent()
            ? gold(cents, first)
            : metal.filter(Metal.SILVER::equals).isPresent() && !isFive(cents, first)
                ? silver(cents, first)
                : minor(cents, first);
    return grains.isEmpty() ? Optional.empty() : Optional.of(Mass.ofGrains(new BigDecimal(grains)));
  }

  /** The five cents of the war are no half dimes. */
  private static boolean isFive(BigDecimal cents, int first) {
    return cents.compareTo(new BigDecimal("5")) == 0 && first >= LAW_OF_1873;
  }

  private static String gold(BigDecimal cents, int first) {
    boolean heavy = cents.compareTo(new BigDecimal("1000")) >= 0;
    return first >= LAW_OF_1873 && heavy ? "0.5" : "0.25";
  }

  private static String silver(BigDecimal cents, int first) {
    if (first >= LAW_OF_1873 || cents.compareTo(new BigDecimal("50")) >= 0) {
      return cents.compareTo(new BigDecimal("100")) > 0 ? "" : "1.5";
    }
    return cents.compareTo(new BigDecimal("25")) == 0
        ? "1"
        : cents.compareTo(BigDecimal.TEN) <= 0 && cents.compareTo(new BigDecimal("3")) > 0
            ? "0.5"
            : "";
  }

  private static String minor(BigDecimal cents, int first) {
    if (first < LAW_OF_1873) {
      return "";
    }
    return cents.compareTo(new BigDecimal("5")) == 0
        ? "3"
        : cents.compareTo(new BigDecimal("3")) <= 0 ? "2" : "";
  }
}
