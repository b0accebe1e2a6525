package fineweight.standard;

import fineweight.metal.Metal;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Coins of one coinage law, which hold metal in proportion to their face value.
 *
 * @param tolerance the share by which the figures in the laws may differ by rounding; zero: exact
 */
record SisterGroup(String name, BigDecimal tolerance, List<String> ids) {
  static List<SisterGroup> all() {
    return ResourceTable.rowsOf(
            "sister-denominations-americas.csv", "sister-denominations-eurasia.csv")
        .stream()
        .map(
            row ->
                new SisterGroup(
                    row.get("group"),
                    new BigDecimal(row.get("tolerance")),
                    List.of(row.get("ids").split(" ", -1))))
        .toList();
  }

  /** The sisters that do not fit the first one, in words. */
  List<String> outOfProportion(Function<String, CoinStandard> catalogue) {
    List<String> wrong = new ArrayList<>();
    CoinStandard first = catalogue.apply(ids.get(0));
    for (String id : ids.subList(1, ids.size())) {
      BigDecimal difference = differenceFromProportion(first, catalogue.apply(id));
      if (difference.compareTo(tolerance) > 0) {
        wrong.add(name + ": " + id + " against " + first.id() + " " + difference);
      }
    }
    return wrong;
  }

  /** The relative difference of the two masses per unit of face value, by cross multiplication. */
  private static BigDecimal differenceFromProportion(CoinStandard first, CoinStandard other) {
    BigDecimal left = metal(first).multiply(other.issue().faceValue().orElseThrow());
    BigDecimal right = metal(other).multiply(first.issue().faceValue().orElseThrow());
    BigDecimal difference = left.subtract(right).abs();
    return right.signum() == 0 ? difference : difference.divide(right, MathContext.DECIMAL32);
  }

  private static BigDecimal metal(CoinStandard standard) {
    Metal metal = standard.specification().composition().mainPreciousMetal().orElse(Metal.COPPER);
    return standard.fineContent().of(metal).grams();
  }
}
