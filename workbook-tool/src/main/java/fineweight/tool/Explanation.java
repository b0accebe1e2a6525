package fineweight.tool;

import fineweight.column.Appraisal;
import fineweight.column.MeltFormula;
import fineweight.identification.Candidate;
import fineweight.identification.Identification.AsStated;
import fineweight.identification.Identification.NoStandard;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.Fineness;
import fineweight.quantity.Mass;
import fineweight.spot.SpotPrices;
import fineweight.standard.CoinStandard;
import fineweight.standard.Sources;
import fineweight.standard.Specification;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;

/** One coin explained, line by line. */
final class Explanation {
  private final PrintWriter out;
  private final SpotPrices spot;
  private final BigDecimal wear;

  Explanation(PrintWriter out, SpotPrices spot, BigDecimal wear) {
    this.out = out;
    this.spot = spot;
    this.wear = wear;
  }

  void print(Appraisal appraisal) {
    if (appraisal.identification() instanceof OneStandard one) {
      coin(one.standard());
      lot(appraisal);
    } else if (appraisal.identification() instanceof SeveralStandards several) {
      out.println("Several standards are possible.");
      out.println("Question: " + several.question());
      for (Candidate candidate : several.candidates()) {
        out.println();
        out.println("If \"" + candidate.answer() + "\":");
        coin(candidate.standard());
      }
    } else if (appraisal.identification() instanceof AsStated stated) {
      out.println(
          "A piece computed from your words (" + stated.words() + "), not from a standard.");
      out.println(
          "  "
              + stated.metal().word()
              + " "
              + stated.fineness()
              + " per mille, gross "
              + grams(stated.gross()));
      contentLines(stated.content());
      lot(appraisal);
    } else if (appraisal.identification() instanceof NoStandard none) {
      out.println(Main.sentence("No figure: " + none.reason()));
    }
    appraisal.notes().forEach(note -> out.println("  Note: " + note));
    appraisal
        .identification()
        .reasons()
        .decidedBy()
        .forEach(word -> out.println("  Decided by: " + word));
    caution();
    out.flush();
  }

  private void coin(CoinStandard standard) {
    out.println(
        standard.issue().country()
            + ", "
            + String.join(" or ", standard.issue().denominations())
            + ", "
            + String.join("; ", standard.issue().types())
            + ", "
            + standard.issue().years()
            + "  ("
            + standard.id()
            + ")");
    Specification specification = standard.specification();
    out.println("  Alloy:         " + specification.composition() + " (parts per thousand)");
    specification.grossMass().ifPresent(mass -> out.println("  Gross mass:    " + grams(mass)));
    specification
        .diameterMillimetres()
        .ifPresent(diameter -> out.println("  Diameter:      " + diameter.toPlainString() + " mm"));
    computation(specification);
    contentLines(standard.fineContent());
    out.println(
        "  Rests on:      "
            + standard.evidence().locator()
            + ", "
            + standard.evidence().certainty().words());
    for (String key : standard.evidence().sources()) {
      out.println("                 " + key + ": " + Sources.citation(key).orElse("(no citation)"));
    }
    if (!standard.evidence().note().isEmpty()) {
      out.println("  Remark:        " + standard.evidence().note());
    }
  }

  private void computation(Specification specification) {
    Optional<Metal> main = specification.composition().mainPreciousMetal();
    if (main.isEmpty()) {
      out.println("  Fine mass:     none, no precious metal");
      return;
    }
    Fineness fineness = specification.composition().fineness(main.get()).orElseThrow();
    if (specification.statedFineMass().isPresent()) {
      out.println(
          "  Fine mass:     "
              + grams(specification.statedFineMass().get())
              + " of "
              + main.get().word()
              + ", stated by the law or the issuer");
    } else if (specification.grossMass().isPresent()) {
      Mass gross = specification.grossMass().get();
      out.println(
          "  Fine mass:     "
              + grams(gross)
              + " x "
              + fineness
              + " / 1000 = "
              + grams(fineness.of(gross))
              + " of "
              + main.get().word());
    } else {
      out.println("  Fine mass:     not known, the catalogue has no mass for this coin");
    }
  }

  private void contentLines(FineContent content) {
    for (Map.Entry<Metal, Mass> entry : content.masses().entrySet()) {
      if (entry.getKey().isPrecious()) {
        out.println(
            "  Fine ounces:   "
                + grams(entry.getValue())
                + " / 31.1034768 g = "
                + ounces(entry.getValue().troyOunces())
                + " ozt of "
                + entry.getKey().word());
      }
    }
    melt(content);
  }

  private void melt(FineContent content) {
    Optional<BigDecimal> melt = new MeltFormula(spot, wear).result(content);
    if (melt.isPresent()) {
      StringBuilder sum = new StringBuilder();
      content.masses().keySet().stream()
          .filter(Metal::isPrecious)
          .forEach(
              metal ->
                  sum.append(sum.isEmpty() ? "" : " + ")
                      .append(ounces(content.troyOunces(metal)))
                      .append(" x ")
                      .append(spot.of(metal).orElseThrow().perTroyOunce().toPlainString()));
      String left = wear.signum() == 0 ? "" : " x (1 - " + wear.toPlainString() + ")";
      out.println(
          "  Melt, one:     "
              + sum
              + left
              + " = "
              + melt.get().toPlainString()
              + " "
              + spot.currency());
    } else if (content.hasPrecious()) {
      out.println("  Melt:          give a price to see it, such as --spot XAG=30.00");
    }
  }

  private void lot(Appraisal appraisal) {
    long pieces = appraisal.pieces().orElse(1L);
    if (pieces > 1) {
      new MeltFormula(spot, wear)
          .result(appraisal.content())
          .ifPresent(
              melt ->
                  out.println(
                      "  "
                          + pieces
                          + " pieces:     "
                          + melt.toPlainString()
                          + " "
                          + spot.currency()));
    }
  }

  private void caution() {
    out.println();
    out.println(
        "Not an offer, not an appraisal, not investment, tax or legal advice. Many coins are worth more than their metal:");
    out.println(
        "have a doubtful piece looked at before it is sold as scrap. Melting or exporting some coins is unlawful in some");
    out.println(
        "places (United States cents and five cents: 31 CFR part 82); local law decides. Do not clean coins or use acids.");
  }

  private static String grams(Mass mass) {
    return mass.grams()
            .setScale(Math.min(mass.grams().scale(), 6), RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString()
        + " g";
  }

  private static String ounces(BigDecimal ounces) {
    return ounces.setScale(6, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
  }
}
