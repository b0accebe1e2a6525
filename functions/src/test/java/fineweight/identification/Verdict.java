package fineweight.identification;

import fineweight.clue.Quantity;
import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.standard.CoinStandard;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/** How an answer compares with the one that a description must get. */
enum Verdict {
  RIGHT,
  /** A question where the words hold enough. */
  ASKED,
  /** No answer where the words hold enough. */
  MISSED,
  /** No answer where a question was expected: nothing wrong is said. */
  NOT_ASKED,
  WRONG;

  /** The share of fine metal by which two standards may differ and still be the same. */
  private static final BigDecimal LIMIT = new BigDecimal("0.005");

  static Verdict of(DescriptionCase expected, Answered got) {
    String kind = got.kind();
    boolean figure = kind.equals("one") || kind.equals("base");
    if (figure && !piecesFit(expected, got)) {
      return got.pieces().isPresent() ? WRONG : MISSED;
    }
    if (expected.passes(kind)) {
      return kind.equals("one") && !metalFits(expected, got) ? WRONG : RIGHT;
    }
    if (kind.equals("one") && expected.passes("flagged") && got.isFlagged()) {
      return metalFits(expected, got) ? RIGHT : WRONG;
    }
    if (kind.equals("one") && expected.passes("pieces") && got.pieces().isEmpty()) {
      return RIGHT;
    }
    if (figure || kind.equals("ask") && expected.answer().equals("none")) {
      return figure ? WRONG : RIGHT;
    }
    if (kind.equals("ask")) {
      return ASKED;
    }
    return expected.answer().equals("ask") ? NOT_ASKED : MISSED;
  }

  private static boolean piecesFit(DescriptionCase expected, Answered got) {
    if (expected.answer().equals("none")) {
      return true;
    }
    if (expected.pieces().isEmpty()) {
      boolean faceValue = got.clues().quantity().value() instanceof Quantity.FaceValue;
      return got.pieces().isEmpty() || faceValue || got.kind().equals("base");
    }
    if (got.pieces().isEmpty()) {
      return expected.passes("pieces");
    }
    return got.pieces().get() == Long.parseLong(expected.pieces());
  }

  private static boolean metalFits(DescriptionCase expected, Answered got) {
    boolean massUnknown =
        expected.standards().stream()
            .map(id -> Answered.STANDARDS.byId(id).orElseThrow())
            .anyMatch(s -> s.specification().isPrecious() && !s.fineContent().hasPrecious());
    return massUnknown
        || expected.standards().isEmpty()
        || expected.standards().stream()
            .map(id -> Answered.STANDARDS.byId(id).orElseThrow())
            .anyMatch(standard -> same(standard, got));
  }

  private static boolean same(CoinStandard expected, Answered got) {
    FineContent content = got.content();
    Optional<BigDecimal> share = faceShare(expected, got);
    for (Metal metal : Metal.values()) {
      if (metal.isPrecious()) {
        BigDecimal wanted = expected.fineContent().of(metal).grams();
        wanted = share.map(wanted::multiply).orElse(wanted);
        BigDecimal found = content.of(metal).grams();
        BigDecimal slack = wanted.multiply(LIMIT).max(trace(expected, metal));
        if (wanted.subtract(found).abs().compareTo(slack) > 0) {
          return false;
        }
      }
    }
    return true;
  }

  /** A face value is compared by metal per dollar: another denomination may stand for it. */
  private static Optional<BigDecimal> faceShare(CoinStandard expected, Answered got) {
    boolean byFace = got.clues().quantity().value() instanceof Quantity.FaceValue;
    if (!byFace || got.standards().isEmpty()) {
      return Optional.empty();
    }
    return got.standards()
        .get(0)
        .issue()
        .faceValue()
        .map(
            face ->
                face.divide(
                    expected.issue().faceValue().orElse(BigDecimal.ONE), MathContext.DECIMAL64));
  }

  /** The few parts of silver in a gold alloy decide nothing. */
  private static BigDecimal trace(CoinStandard standard, Metal metal) {
    boolean main =
        standard
            .specification()
            .composition()
            .mainPreciousMetal()
            .filter(metal::equals)
            .isPresent();
    return main ? BigDecimal.ZERO : new BigDecimal("1.5");
  }
}
