package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.metal.Metal;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Coins of one coinage law hold metal in proportion to their face value: a slip in one of them
 * shows against its sisters. The tolerance of a group is the rounding of the figures in the laws;
 * zero means exact. Which coins belong to one law is common knowledge of the trade, no source.
 */
class SisterDenominationsTest {
  @Test
  void sistersHoldMetalInProportionToTheirFaceValue() {
    List<String> wrong = new ArrayList<>();
    for (Map<String, String> group :
        ResourceTable.rowsOf(
            "sister-denominations-americas.csv", "sister-denominations-eurasia.csv")) {
      List<CoinStandard> sisters = new ArrayList<>();
      for (String id : group.get("ids").split(" ", -1)) {
        sisters.add(Standards.catalogue().byId(id).orElseThrow(() -> new AssertionError(id)));
      }
      BigDecimal tolerance = new BigDecimal(group.get("tolerance"));
      CoinStandard first = sisters.get(0);
      for (CoinStandard other : sisters.subList(1, sisters.size())) {
        BigDecimal difference = differenceFromProportion(first, other);
        if (difference.compareTo(tolerance) > 0) {
          wrong.add(
              group.get("group") + ": " + other.id() + " against " + first.id() + " " + difference);
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  /** The relative difference of the two masses per unit of face value, by cross multiplication. */
  private static BigDecimal differenceFromProportion(CoinStandard first, CoinStandard other) {
    BigDecimal left = metal(first).multiply(other.issue().faceValue().orElseThrow());
    BigDecimal right = metal(other).multiply(first.issue().faceValue().orElseThrow());
    return left.subtract(right).abs().divide(right, MathContext.DECIMAL32);
  }

  private static BigDecimal metal(CoinStandard standard) {
    Metal metal = standard.specification().composition().mainPreciousMetal().orElse(Metal.COPPER);
    return standard.fineContent().of(metal).grams();
  }
}
