package fineweight.price;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A collector's price list. The lines that fit a piece most closely count: those that name its mint
 * before those for any, and of these the ones for the fewest years. Certified pieces take certified
 * prices only, raw ones raw prices only, proofs those of proofs. Between two grades the price lies
 * on the straight line between theirs; below the lowest and above the highest there is none.
 * Immutable.
 */
public final class PriceList {
  private final List<ListedPrice> lines;

  private PriceList(List<ListedPrice> lines) {
    this.lines = List.copyOf(lines);
  }

  public static PriceList of(List<ListedPrice> lines) {
    return new PriceList(lines);
  }

  public boolean isEmpty() {
    return lines.isEmpty();
  }

  /** Whether a line is for the piece's type, whatever its year, mint and grade. */
  public boolean hasTypeOf(PriceQuestion question) {
    return lines.stream().anyMatch(line -> question.types().contains(line.pieces().type()));
  }

  /** The price of a piece, or why there is none. */
  public PriceAnswer price(PriceQuestion question) {
    List<ListedPrice> fitting =
        lines.stream().filter(line -> line.pieces().isFor(question)).toList();
    if (fitting.isEmpty()) {
      return new PriceAnswer.NotListed("your list has no line for this type, year and mint");
    }
    List<ListedPrice> ofKind = fitting.stream().filter(line -> isOfKind(line, question)).toList();
    if (ofKind.isEmpty()) {
      return new PriceAnswer.NotListed(otherKind(question));
    }
    List<ListedPrice> closest = closest(ofKind);
    if (closest.stream().map(line -> line.each().getCurrencyUnit()).distinct().count() > 1) {
      return new PriceAnswer.NotListed("your list has lines in two currencies for this piece");
    }
    return new GradeLine(closest).at(question.condition().grade());
  }

  private static boolean isOfKind(ListedPrice line, PriceQuestion question) {
    boolean sameStrike = line.grade().isEmpty() || line.isProof() == question.isProof();
    return line.certified() == question.condition().certified() && sameStrike;
  }

  private static String otherKind(PriceQuestion question) {
    String strike = question.isProof() ? "proof " : "";
    return question.condition().certified()
        ? "your list has no price for a certified " + strike + "piece here, only others"
        : "your list has no price for a raw "
            + strike
            + "piece here; only an independent"
            + " certifier's grade takes a certified price";
  }

  private static List<ListedPrice> closest(List<ListedPrice> lines) {
    Comparator<ListedPrice> byCloseness =
        Comparator.<ListedPrice, Boolean>comparing(line -> line.pieces().mint().isEmpty())
            .thenComparing(line -> line.pieces().span());
    Optional<ListedPrice> best = lines.stream().min(byCloseness);
    return lines.stream()
        .filter(line -> byCloseness.compare(line, best.orElseThrow()) == 0)
        .toList();
  }
}
