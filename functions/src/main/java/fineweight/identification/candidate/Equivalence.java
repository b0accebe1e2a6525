package fineweight.identification.candidate;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.standard.CoinStandard;
import java.math.BigDecimal;
import java.util.List;

/**
 * Whether it matters which of several standards a coin is of: not if their precious metal differs
 * by less than 0.5 %.
 */
public final class Equivalence {
  private static final BigDecimal LIMIT = new BigDecimal("0.005");

  private Equivalence() {}

  public static boolean same(List<CoinStandard> standards) {
    for (Metal metal : Metal.values()) {
      if (metal.isPrecious() && differs(standards, metal)) {
        return false;
      }
    }
    return true;
  }

  private static boolean differs(List<CoinStandard> standards, Metal metal) {
    BigDecimal least = null;
    BigDecimal most = null;
    for (CoinStandard standard : standards) {
      BigDecimal grams = standard.fineContent().of(metal).grams();
      boolean unknown =
          grams.signum() == 0 && standard.specification().composition().fineness(metal).isPresent();
      if (unknown) {
        return standards.size() > 1;
      }
      least = least == null || grams.compareTo(least) < 0 ? grams : least;
      most = most == null || grams.compareTo(most) > 0 ? grams : most;
    }
    return most != null
        && most.subtract(least).compareTo(most.multiply(LIMIT)) > 0
        && !isTrace(most, standards, metal);
  }

  /** The few parts of silver in the alloy of a gold coin decide nothing. */
  private static boolean isTrace(BigDecimal most, List<CoinStandard> standards, Metal metal) {
    return standards.stream()
            .noneMatch(
                s ->
                    s.specification()
                        .composition()
                        .mainPreciousMetal()
                        .filter(metal::equals)
                        .isPresent())
        && most.compareTo(new BigDecimal("1.5")) < 0;
  }

  /** The standard with the least precious metal; the first of equals. */
  public static CoinStandard lowest(List<CoinStandard> standards) {
    CoinStandard lowest = standards.get(0);
    for (CoinStandard standard : standards) {
      if (grams(standard.fineContent()).compareTo(grams(lowest.fineContent())) < 0) {
        lowest = standard;
      }
    }
    return lowest;
  }

  private static BigDecimal grams(FineContent content) {
    BigDecimal sum = BigDecimal.ZERO;
    for (Metal metal : content.masses().keySet()) {
      sum = metal.isPrecious() ? sum.add(content.of(metal).grams()) : sum;
    }
    return sum;
  }
}
