package fineweight.identification;

import fineweight.clue.Clue;
import fineweight.clue.Clues;
import fineweight.clue.Measures;
import fineweight.clue.MetalWords;
import fineweight.identification.Identification.AsStated;
import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.Fineness;
import fineweight.quantity.Mass;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Rounds, bars and medals: computed from the mass, metal and fineness that the words name. */
final class StatedPiece {
  private static final Fineness PURE_ENOUGH = Fineness.ofPerMille("990");

  private StatedPiece() {}

  /** Whether the row is about such a piece and not about a coin. */
  static boolean isMeant(Clues clues) {
    boolean named =
        clues.condition().mark("bar").isPresent()
            || clues.condition().mark("round").isPresent()
            || clues.condition().mark("medal").isPresent();
    boolean coin = !clues.denominations().isEmpty();
    boolean bare =
        !coin && clues.types().isEmpty() && mass(clues).isPresent() && metal(clues).isPresent();
    return (named && !coin) || bare;
  }

  static boolean isComputable(Clues clues) {
    return metal(clues).isPresent() && mass(clues).isPresent();
  }

  static Identification of(Clues clues, Reasons reasons) {
    Optional<Metal> metal = metal(clues);
    Optional<Clue<Mass>> mass = mass(clues);
    if (metal.isEmpty()) {
      return none("the words do not say of what metal the piece is", reasons);
    }
    if (!metal.get().isPrecious()) {
      return new AsStated(
          metal.get(),
          Fineness.ofPerMille("1000"),
          mass.map(Clue::value).orElse(Mass.ZERO),
          FineContent.NONE,
          words(clues),
          reasons);
    }
    if (mass.isEmpty()) {
      return none("the words do not say how heavy the piece is", reasons);
    }
    Optional<Clue<Fineness>> said = clues.physical().metal().fineness();
    if (said.isEmpty() && !isFineByTrade(clues)) {
      return none("the words do not say how fine the piece is (sterling, 999, 800 ...)", reasons);
    }
    Fineness fineness = said.map(Clue::value).orElse(Fineness.ofPerMille("999"));
    return new AsStated(
        metal.get(),
        fineness,
        mass.get().value(),
        content(metal.get(), fineness, mass.get(), clues),
        words(clues),
        reasons);
  }

  /** Bars, rounds and whatever is sold by the ounce are fine metal; medals are not. */
  private static boolean isFineByTrade(Clues clues) {
    boolean ware =
        clues.condition().mark("bar").isPresent() || clues.condition().mark("round").isPresent();
    boolean ounces = clues.physical().measures().statedOunces().isPresent();
    return (ware || ounces) && clues.condition().mark("medal").isEmpty();
  }

  /** "1 oz .999" names the ounce of fine metal; grams are gross and count by their fineness. */
  private static FineContent content(Metal metal, Fineness fineness, Clue<Mass> mass, Clues clues) {
    boolean ounces = clues.physical().measures().statedOunces().isPresent();
    boolean fineOunce = ounces && fineness.compareTo(PURE_ENOUGH) >= 0;
    return new FineContent(Map.of(metal, fineOunce ? mass.value() : fineness.of(mass.value())));
  }

  private static Optional<Metal> metal(Clues clues) {
    MetalWords words = clues.physical().metal();
    for (Clue<String> said : words.said()) {
      Optional<Metal> metal =
          switch (said.value()) {
            case "bronze", "brass", "cupronickel", "nickel-brass" -> Optional.of(Metal.COPPER);
            case "steel" -> Optional.of(Metal.IRON);
            default -> Metal.ofCode(said.value());
          };
      if (metal.isPresent()) {
        return metal;
      }
    }
    boolean sterling =
        words
            .fineness()
            .filter(clue -> clue.words().toLowerCase(java.util.Locale.ROOT).contains("sterling"))
            .isPresent();
    return sterling ? Optional.of(Metal.SILVER) : Optional.empty();
  }

  private static Optional<Clue<Mass>> mass(Clues clues) {
    Measures measures = clues.physical().measures();
    if (measures.statedOunces().isPresent()) {
      Clue<java.math.BigDecimal> ounces = measures.statedOunces().get();
      return Optional.of(
          new Clue<>(Mass.ofTroyOunces(ounces.value()), ounces.words(), ounces.from()));
    }
    return measures.statedMass().isPresent() ? measures.statedMass() : measures.mass();
  }

  private static String words(Clues clues) {
    List<String> words = new java.util.ArrayList<>();
    mass(clues).ifPresent(mass -> words.add(mass.words()));
    clues.physical().metal().said().stream().findFirst().ifPresent(said -> words.add(said.words()));
    clues.physical().metal().fineness().ifPresent(fineness -> words.add(fineness.words()));
    return String.join(", ", words.stream().distinct().toList());
  }

  private static Identification none(String reason, Reasons reasons) {
    return new Identification.NoStandard(Identification.NoStandard.Kind.NOT_KNOWN, reason, reasons);
  }
}
