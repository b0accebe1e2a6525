package fineweight.label;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What stays free at the four edges of the paper, in millimetres. Immutable.
 *
 * @param top from the upper edge to the first label
 * @param right from the last label to the edge, at least
 * @param bottom from the last label to the edge, at least
 * @param left from the left edge to the first label
 */
public record Margins(BigDecimal top, BigDecimal right, BigDecimal bottom, BigDecimal left) {
  /**
   * @throws IllegalArgumentException if one of them is below zero
   */
  public Margins {
    for (BigDecimal each : List.of(top, right, bottom, left)) {
      if (each.signum() < 0) {
        throw new IllegalArgumentException("a margin is not below zero");
      }
    }
  }

  /** Reads one figure for all four, or "top,right,bottom,left"; empty if the words are neither. */
  public static Optional<Margins> read(String words) {
    List<BigDecimal> figures = new ArrayList<>();
    for (String part : words.split(",", -1)) {
      String figure = part.strip();
      if (!figure.matches("\\d+(\\.\\d+)?")) {
        return Optional.empty();
      }
      figures.add(new BigDecimal(figure));
    }
    BigDecimal top = figures.get(0);
    return switch (figures.size()) {
      case 1 -> Optional.of(new Margins(top, top, top, top));
      case 4 -> Optional.of(new Margins(top, figures.get(1), figures.get(2), figures.get(3)));
      default -> Optional.empty();
    };
  }
}
