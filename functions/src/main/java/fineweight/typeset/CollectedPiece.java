package fineweight.typeset;

import fineweight.grade.Condition;
import fineweight.standard.CoinStandard;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A row of the collection as a set sees it. Immutable.
 *
 * @param key the row's key
 * @param standards the standard, or those that are still possible
 * @param year its date, if known
 * @param mint its mint mark in capitals, an empty text for none; no value if not known
 * @param type the place of the set, where the collector named it: its key, or denomination and name
 * @param condition its preservation
 * @param count how many, one or more
 * @param ruling what the collector decided, if he did
 */
public record CollectedPiece(
    String key,
    List<CoinStandard> standards,
    OptionalInt year,
    Optional<String> mint,
    Optional<String> type,
    Condition condition,
    int count,
    Optional<Ruling> ruling) {
  /** The collector's own decision; it beats every proposal. */
  public enum Ruling {
    KEEP,
    SELL
  }

  /**
   * @throws IllegalArgumentException if the count is below one
   */
  public CollectedPiece {
    Objects.requireNonNull(key, "key");
    standards = List.copyOf(standards);
    Objects.requireNonNull(year, "year");
    Objects.requireNonNull(mint, "mint");
    Objects.requireNonNull(type, "type");
    Objects.requireNonNull(condition, "condition");
    Objects.requireNonNull(ruling, "ruling");
    if (count < 1) {
      throw new IllegalArgumentException("the count is one or more, not " + count);
    }
  }

  boolean isRuled(Ruling wanted) {
    return ruling.filter(wanted::equals).isPresent();
  }

  boolean isCertified() {
    return condition.certified();
  }

  /** The low end of its grade; 0, below the scale, where none is recorded. */
  int lowGrade() {
    return condition.grade().map(grade -> grade.low()).orElse(0);
  }

  int highGrade() {
    return condition.grade().map(grade -> grade.high()).orElse(0);
  }
}
