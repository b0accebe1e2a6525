package fineweight.identification.weighing;

import fineweight.assay.Density;
import fineweight.assay.MintTolerance;
import fineweight.clue.Clue;
import fineweight.clue.Measures;
import fineweight.identification.candidate.Profile;
import fineweight.identification.candidate.When;
import fineweight.metal.Metal;
import fineweight.quantity.Decimals;
import fineweight.quantity.Mass;
import fineweight.standard.CoinStandard;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Sentences about what scale and water said: hints to look closer, never a verdict. */
final class ScaleRemarks {
  private static final BigDecimal HUNDRED = new BigDecimal("100");

  /** Half of the last figure that many scales show. */
  private static final BigDecimal ROUNDING = new BigDecimal("0.05");

  private final Measures measures;
  private final When when;
  private final Working working;

  private ScaleRemarks(Measures measures, When when, Working working) {
    this.measures = measures;
    this.when = when;
    this.working = working;
  }

  static void add(Measures measures, When when, Working working) {
    ScaleRemarks remarks = new ScaleRemarks(measures, when, working);
    remarks.density();
    remarks.tolerance();
  }

  private void density() {
    if (measures.mass().isEmpty() || measures.massInWater().isEmpty()) {
      return;
    }
    Optional<BigDecimal> density =
        Density.measured(measures.mass().get().value(), measures.massInWater().get().value());
    if (density.isEmpty()) {
      working.remark("the mass in water is not less than the mass in air: weigh again");
      return;
    }
    String shown = density.get().setScale(1, RoundingMode.HALF_UP).toPlainString();
    boolean agrees =
        working.narrow(profile -> isPossible(profile, density.get()), "density " + shown);
    if (!agrees) {
      CoinStandard first = working.open().get(0).standard();
      Density.of(first.specification().composition())
          .ifPresent(
              expected ->
                  working.remark(
                      "density "
                          + shown
                          + " does not fit "
                          + alloy(first)
                          + ", "
                          + expected
                          + ": weigh again, then have the piece looked at"));
    }
  }

  private static boolean isPossible(Profile profile, BigDecimal density) {
    return Density.of(profile.standard().specification().composition())
        .map(expected -> expected.allows(density))
        .orElse(true);
  }

  private static String alloy(CoinStandard standard) {
    Optional<Metal> metal = standard.specification().composition().mainPreciousMetal();
    return metal
        .map(
            main ->
                standard.specification().composition().fineness(main).orElseThrow()
                    + " "
                    + main.word())
        .orElse("this alloy (" + standard.specification().composition() + ")");
  }

  private void tolerance() {
    if (measures.mass().isEmpty() || working.open().size() != 1 || when.year().isEmpty()) {
      return;
    }
    Clue<Mass> mass = measures.mass().get();
    CoinStandard standard = working.open().get(0).standard();
    Optional<MintTolerance> tolerance = MintTolerance.of(standard, when.year().getAsInt());
    Optional<Mass> struck = standard.specification().grossMass();
    if (tolerance.isEmpty() || struck.isEmpty()) {
      return;
    }
    BigDecimal difference = mass.value().grams().subtract(struck.get().grams());
    BigDecimal allowed = tolerance.get().allowance().grams();
    if (difference.abs().compareTo(allowed.add(ROUNDING)) > 0) {
      working.remark(sentence(mass.value(), struck.get(), difference, tolerance.get()));
    }
  }

  private static String sentence(
      Mass mass, Mass struck, BigDecimal difference, MintTolerance tolerance) {
    BigDecimal share = difference.abs().multiply(HUNDRED).divide(struck.grams(), Decimals.DIVISION);
    return mass
        + " is "
        + rounded(difference.abs(), 2)
        + " g ("
        + rounded(share, 1)
        + " %) "
        + (difference.signum() < 0 ? "less" : "more")
        + " than as struck, "
        + rounded(struck.grams(), 2)
        + " g; the mint allowed "
        + rounded(tolerance.allowance().grams(), 2)
        + " g ("
        + tolerance.source()
        + "): "
        + (difference.signum() < 0 ? "worn, or not this coin" : "weigh again, or not this coin");
  }

  private static String rounded(BigDecimal number, int places) {
    return number.setScale(places, RoundingMode.HALF_UP).toPlainString();
  }
}
