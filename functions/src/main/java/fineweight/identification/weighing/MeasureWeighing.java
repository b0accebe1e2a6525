package fineweight.identification.weighing;

import fineweight.clue.Clue;
import fineweight.clue.Measures;
import fineweight.identification.candidate.MeasureMatch;
import fineweight.identification.candidate.Profile;
import fineweight.quantity.Mass;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/** Weighs what scale, calliper and magnet said. */
final class MeasureWeighing {
  private final Working working;

  private MeasureWeighing(Working working) {
    this.working = working;
  }

  static void weigh(Measures measures, Working working) {
    MeasureWeighing weighing = new MeasureWeighing(working);
    Optional<Clue<Mass>> mass =
        measures.mass().isPresent() ? measures.mass() : measures.statedMass();
    mass.ifPresent(weighing::mass);
    measures.diameterMillimetres().ifPresent(weighing::diameter);
    measures.magnetic().ifPresent(weighing::magnet);
  }

  private void mass(Clue<Mass> measured) {
    Mass mass = measured.value();
    List<Profile> fit =
        working.open().stream().filter(p -> MeasureMatch.mass(p.standard(), mass)).toList();
    if (fit.isEmpty()) {
      working.contradict(misfit(mass));
      return;
    }
    BigDecimal best =
        fit.stream()
            .map(p -> MeasureMatch.distance(p.standard(), mass))
            .min(BigDecimal::compareTo)
            .orElseThrow();
    working.narrow(
        profile ->
            MeasureMatch.mass(profile.standard(), mass)
                && MeasureMatch.isClose(MeasureMatch.distance(profile.standard(), mass), best),
        "mass " + mass);
  }

  private String misfit(Mass mass) {
    String expected =
        working
            .open()
            .get(0)
            .standard()
            .specification()
            .grossMass()
            .map(gross -> round(gross) + " g")
            .orElse("another mass");
    return mass + " does not fit " + expected;
  }

  private static String round(Mass mass) {
    return mass.grams().setScale(2, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
  }

  private void diameter(Clue<BigDecimal> measured) {
    String millimetres = measured.value().toPlainString() + " mm";
    boolean agrees =
        working.narrow(
            profile -> MeasureMatch.diameter(profile.standard(), measured.value()),
            "diameter " + millimetres);
    if (!agrees) {
      working.remark(
          "the diameter "
              + millimetres
              + " does not fit"
              + expectedDiameter()
              + ": have the piece looked at");
    }
  }

  private String expectedDiameter() {
    return working
        .open()
        .get(0)
        .standard()
        .specification()
        .diameterMillimetres()
        .map(known -> " " + known.stripTrailingZeros().toPlainString() + " mm")
        .orElse("");
  }

  private void magnet(Clue<Boolean> magnet) {
    boolean attracted = magnet.value();
    boolean agrees =
        working.narrow(
            profile ->
                profile
                    .standard()
                    .specification()
                    .magnetic()
                    .map(known -> known == attracted)
                    .orElse(true),
            attracted ? "a magnet attracts it" : "a magnet does not attract it");
    if (!agrees) {
      working.contradict(
          attracted
              ? "a magnet attracts it, so it is not this coin of silver or gold"
              : "no magnet attracts it, though this coin is magnetic");
    }
  }
}
