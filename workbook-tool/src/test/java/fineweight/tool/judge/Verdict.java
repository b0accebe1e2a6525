package fineweight.tool.judge;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;

/** How a filled row stands against the key. */
public enum Verdict {
  RIGHT("right"),
  NEEDLESS("needless question"),
  NOT_KNOWN("not known"),
  WRONG("wrong");

  /** The tolerances of the key: 0.05 %, and 0.6 % where one piece holds less than 0.065 ozt. */
  private static final BigDecimal USUAL = new BigDecimal("0.0005");

  private static final BigDecimal SMALL_PIECE = new BigDecimal("0.006");
  private static final BigDecimal SMALL = new BigDecimal("0.065");

  /** The key's figure and ours are each rounded to the cent. */
  private static final BigDecimal TWO_ROUNDINGS = new BigDecimal("0.01");

  private final String words;

  Verdict(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  public static Verdict of(KeyRow key, FilledRow filled) {
    return switch (key.answer()) {
      case "skip" -> filled.state() == FilledRow.State.BLANK && !filled.hasFigure() ? RIGHT : WRONG;
      case "one" -> one(key, filled);
      case "base" -> base(key, filled);
      case "ask" -> ask(key, filled);
      case "none" -> none(key, filled);
      default -> throw new IllegalArgumentException("an unknown answer: " + key.answer());
    };
  }

  private static Verdict one(KeyRow key, FilledRow filled) {
    return switch (filled.state()) {
      case VALUED -> figuresFit(key, filled) ? RIGHT : WRONG;
      case SEVERAL -> key.passesAs("ask") ? RIGHT : NEEDLESS;
      case NOT_KNOWN -> filled.hasFigure() ? WRONG : key.passesAs("none") ? RIGHT : NOT_KNOWN;
      default -> WRONG;
    };
  }

  private static Verdict base(KeyRow key, FilledRow filled) {
    return switch (filled.state()) {
      case NOTHING -> filled.hasFigure() ? WRONG : RIGHT;
      case SEVERAL -> key.passesAs("ask") ? RIGHT : NEEDLESS;
      case NOT_KNOWN -> filled.hasFigure() ? WRONG : key.passesAs("none") ? RIGHT : NOT_KNOWN;
      default -> WRONG;
    };
  }

  private static Verdict ask(KeyRow key, FilledRow filled) {
    return switch (filled.state()) {
      case SEVERAL -> lowestFits(key, filled) ? RIGHT : WRONG;
      case NOT_KNOWN -> filled.hasFigure() ? WRONG : key.passesAs("none") ? RIGHT : NOT_KNOWN;
      default -> WRONG;
    };
  }

  /** No figure and a reason: for a copy or an ancient coin also that there is nothing to value. */
  private static Verdict none(KeyRow key, FilledRow filled) {
    return switch (filled.state()) {
      case NOT_KNOWN -> filled.hasFigure() || filled.text("Note").isEmpty() ? WRONG : RIGHT;
      case SEVERAL -> key.passesAs("ask") ? RIGHT : WRONG;
      case NOTHING -> filled.hasFigure() || filled.text("Note").isEmpty() ? WRONG : RIGHT;
      default -> WRONG;
    };
  }

  private static boolean figuresFit(KeyRow key, FilledRow filled) {
    boolean fit = true;
    for (String code : FilledRow.OUNCES.keySet()) {
      fit &= key.accepted(code).stream().anyMatch(each -> near(each, filled.ounces(code), key));
    }
    return fit && meltFits(key, filled);
  }

  private static boolean meltFits(KeyRow key, FilledRow filled) {
    if (key.hasOtherFigures()) {
      return filled.melt().isPresent();
    }
    BigDecimal wanted = key.melt().orElse(BigDecimal.ZERO);
    BigDecimal given = filled.melt().orElse(BigDecimal.ZERO);
    BigDecimal allowed = wanted.multiply(tolerance(key)).add(TWO_ROUNDINGS);
    return wanted.subtract(given).abs().compareTo(allowed) <= 0;
  }

  /** The figures are those of one of the possibilities, and no possibility is worth less. */
  private static boolean lowestFits(KeyRow key, FilledRow filled) {
    boolean possible = true;
    for (String code : FilledRow.OUNCES.keySet()) {
      possible &=
          key.ounces().get(code).stream().anyMatch(each -> near(each, filled.ounces(code), key));
    }
    return possible
        && meltFits(key, filled)
        && filled
                .meltAtMost()
                .orElse(BigDecimal.ZERO)
                .compareTo(filled.melt().orElse(BigDecimal.ZERO))
            >= 0
        && !filled.text("Note").isEmpty();
  }

  private static boolean near(BigDecimal wanted, BigDecimal given, KeyRow key) {
    BigDecimal rounding =
        wanted.signum() == 0 ? BigDecimal.ZERO : wanted.ulp().divide(new BigDecimal(2));
    BigDecimal allowed = wanted.multiply(tolerance(key)).add(rounding);
    return wanted.subtract(given).abs().compareTo(allowed) <= 0;
  }

  private static BigDecimal tolerance(KeyRow key) {
    BigDecimal pieces = key.pieces().filter(each -> each.signum() > 0).orElse(BigDecimal.ONE);
    BigDecimal most =
        key.ounces().values().stream()
            .flatMap(java.util.List::stream)
            .max(Comparator.naturalOrder())
            .orElse(BigDecimal.ZERO);
    BigDecimal each = most.divide(pieces, 12, RoundingMode.HALF_UP);
    return each.compareTo(SMALL) < 0 ? SMALL_PIECE : USUAL;
  }
}
