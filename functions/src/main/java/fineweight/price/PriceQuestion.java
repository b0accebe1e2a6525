package fineweight.price;

import fineweight.grade.Condition;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The piece that a price is looked for. Immutable.
 *
 * @param types every name or key the piece's type goes by
 * @param year its date
 * @param mint its mint mark in capitals; empty where it bears none
 * @param condition its preservation
 */
public record PriceQuestion(Set<String> types, int year, String mint, Condition condition) {
  public PriceQuestion {
    types = types.stream().map(ListedPrice.Pieces::plain).collect(Collectors.toUnmodifiableSet());
    mint = mint.strip().toUpperCase(Locale.ROOT);
    Objects.requireNonNull(condition, "condition");
  }

  String mintOrNone() {
    return mint.isEmpty() ? "NONE" : mint;
  }

  boolean isProof() {
    return condition.grade().map(grade -> grade.proof()).orElse(false);
  }
}
