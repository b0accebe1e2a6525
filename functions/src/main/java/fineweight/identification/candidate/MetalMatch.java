package fineweight.identification.candidate;

import fineweight.metal.Composition;
import fineweight.metal.Metal;
import fineweight.quantity.Fineness;
import fineweight.standard.CoinStandard;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Whether a standard agrees with a metal or a fineness that the words name. */
public final class MetalMatch {
  /** A said 900 means 892.4 of an early coin too; 917 and 900 stay apart. */
  private static final BigDecimal NEAR = new BigDecimal("8");

  private static final Fineness HALF = Fineness.ofPerMille("500");

  /** Metals of the middle of modern coins of silver or gold. */
  private static final Set<Metal> BESIDE_SILVER =
      EnumSet.of(Metal.NIOBIUM, Metal.TITANIUM, Metal.TANTALUM);

  private MetalMatch() {}

  public static boolean metal(CoinStandard standard, String said) {
    Composition alloy = standard.specification().composition();
    Optional<Metal> precious = alloy.mainPreciousMetal();
    Optional<Metal> element = Metal.ofCode(said);
    if (element.isPresent() && element.get().isPrecious()) {
      return precious.isPresent()
          && (precious.get() == element.get() || isHalfOf(alloy, element.get()));
    }
    if (said.equals("clad")) {
      return precious.isEmpty() || standard.distinction().variant().contains("clad");
    }
    if (said.equals("bimetal")) {
      return precious.isEmpty() || isOfTwoParts(standard);
    }
    if (said.equals("billon")) {
      return precious.filter(metal -> alloy.fineness(metal).get().compareTo(HALF) < 0).isPresent();
    }
    boolean besideSilver = element.filter(BESIDE_SILVER::contains).isPresent();
    return (precious.isEmpty() || besideSilver) && holdsBase(alloy, said, element);
  }

  private static boolean isOfTwoParts(CoinStandard standard) {
    String words =
        (standard.distinction().variant() + " " + standard.issue().types())
            .toLowerCase(Locale.ROOT);
    return words.contains("ring")
        || words.contains("core")
        || words.contains("centre")
        || words.contains("bimetal");
  }

  /** The platinum core in a gold ring. */
  private static boolean isHalfOf(Composition alloy, Metal metal) {
    return alloy
        .fineness(metal)
        .filter(share -> share.perMille().compareTo(new BigDecimal("300")) > 0)
        .isPresent();
  }

  private static boolean holdsBase(Composition alloy, String said, Optional<Metal> element) {
    Set<Metal> held = EnumSet.noneOf(Metal.class);
    alloy.parts().forEach(part -> held.addAll(part.metals()));
    if (element.isPresent()) {
      return held.contains(element.get());
    }
    return switch (said) {
      case "cupronickel" -> held.contains(Metal.NICKEL);
      case "bronze", "brass" -> held.contains(Metal.COPPER);
      case "steel" -> held.contains(Metal.IRON);
      case "aluminium-bronze" -> held.contains(Metal.COPPER) && held.contains(Metal.ALUMINIUM);
      case "nickel-brass", "nordic gold" -> held.contains(Metal.COPPER);
      default -> true;
    };
  }

  public static boolean fineness(CoinStandard standard, Fineness said) {
    Composition alloy = standard.specification().composition();
    for (Metal metal : alloy.metals()) {
      if (metal.isPrecious()
          && alloy.fineness(metal).get().perMille().subtract(said.perMille()).abs().compareTo(NEAR)
              <= 0) {
        return true;
      }
    }
    return false;
  }
}
