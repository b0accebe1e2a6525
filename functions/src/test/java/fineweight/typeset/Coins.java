package fineweight.typeset;

import fineweight.grade.Condition;
import fineweight.metal.Composition;
import fineweight.quantity.Mass;
import fineweight.standard.Certainty;
import fineweight.standard.CoinStandard;
import fineweight.standard.Distinction;
import fineweight.standard.Evidence;
import fineweight.standard.Issue;
import fineweight.standard.Mints;
import fineweight.standard.Specification;
import fineweight.standard.Years;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Standards and pieces for the tests of sets. */
final class Coins {
  static final CoinStandard EARLY_DOLLAR =
      dollar("us-dollar-1794-1803", "1794-1803", "", "Ag 892.4", "26.956");
  static final CoinStandard MORGAN =
      dollar(
          "us-dollar-1878-1921-morgan",
          "1878-1904;1921",
          "P (none); D (1921); S; O; CC (1878-1893)",
          "Ag 900",
          "26.7296");
  static final CoinStandard PEACE =
      dollar(
          "us-dollar-1921-1935-peace",
          "1921-1928;1934-1935",
          "P (none); D; S",
          "Ag 900",
          "26.7296");
  static final CoinStandard MEDAL = dollar("medal", "1893", "", "Cu 900", "20");

  private Coins() {}

  static CoinStandard dollar(
      String id, String years, String mints, String composition, String grams) {
    return new CoinStandard(
        id,
        new Issue(
            "US",
            List.of("dollar"),
            Optional.of(BigDecimal.ONE),
            "USD",
            List.of(),
            Years.parse(years),
            Mints.parse(mints)),
        new Distinction("", List.of(), List.of()),
        new Specification(
            Composition.parse(composition),
            Optional.of(Mass.ofGrams(grams)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()),
        new Evidence(List.of(), "", Certainty.OWN, ""));
  }

  static CollectedPiece piece(CoinStandard standard, int year, String mint, Condition condition) {
    return new CollectedPiece(
        standard.id() + year + mint,
        List.of(standard),
        OptionalInt.of(year),
        Optional.of(mint),
        Optional.empty(),
        condition,
        1,
        Optional.empty());
  }

  static CollectedPiece named(CollectedPiece piece, String type) {
    return new CollectedPiece(
        piece.key(),
        piece.standards(),
        piece.year(),
        piece.mint(),
        Optional.of(type),
        piece.condition(),
        piece.count(),
        piece.ruling());
  }
}
