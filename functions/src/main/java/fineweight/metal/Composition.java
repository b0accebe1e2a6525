package fineweight.metal;

import fineweight.quantity.Decimals;
import fineweight.quantity.Fineness;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;

/**
 * An alloy as parts per thousand of gross mass. Immutable.
 *
 * <p>Metals whose split is not known stand together in one part ({@code Sn+Zn 50}). Parts may add
 * up to less than 1000: the rest is then not named by the source. A precious metal never stands in
 * a part together with a base metal unless the source does so ({@code Cu+Ag 100} in the alloy of
 * old gold); its share is then not counted as known.
 */
public final class Composition {
  private static final BigDecimal THOUSAND = new BigDecimal("1000");

  private final List<Part> parts;
  private final Map<Metal, Fineness> known;

  /**
   * One part: a metal, or several whose split is not known, and their share in parts per thousand.
   */
  public record Part(Set<Metal> metals, Fineness share) {
    public Part {
      metals = Collections.unmodifiableSet(EnumSet.copyOf(metals));
    }

    @Override
    public String toString() {
      StringJoiner names = new StringJoiner("+");
      metals.forEach(metal -> names.add(metal.symbol()));
      return names + " " + share;
    }
  }

  private Composition(List<Part> parts) {
    this.parts = List.copyOf(parts);
    Map<Metal, Fineness> single = new EnumMap<>(Metal.class);
    for (Part part : parts) {
      if (part.metals().size() == 1) {
        single.put(part.metals().iterator().next(), part.share());
      }
    }
    this.known = Collections.unmodifiableMap(single);
  }

  /**
   * @throws IllegalArgumentException if there is no part, a metal stands twice, or the parts exceed
   *     1000
   */
  public static Composition of(List<Part> parts) {
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("a composition names at least one metal");
    }
    Set<Metal> seen = EnumSet.noneOf(Metal.class);
    BigDecimal sum = BigDecimal.ZERO;
    for (Part part : parts) {
      sum = sum.add(part.share().perMille());
      for (Metal metal : part.metals()) {
        if (!seen.add(metal)) {
          throw new IllegalArgumentException(metal.symbol() + " stands twice in one composition");
        }
      }
    }
    if (sum.compareTo(THOUSAND) > 0) {
      throw new IllegalArgumentException(
          "the parts add up to " + sum.toPlainString() + ", more than 1000");
    }
    return new Composition(parts);
  }

  /**
   * Reads {@code "Ag 900; Cu 100"} or {@code "Cu 950; Sn+Zn 50"}.
   *
   * @throws IllegalArgumentException if the text is not of this form
   */
  public static Composition parse(String text) {
    List<Part> parts = new ArrayList<>();
    for (String piece : text.split(";", -1)) {
      String[] words = piece.strip().split("\\s+");
      if (words.length != 2) {
        throw new IllegalArgumentException(
            "expected a metal and its parts per thousand, found \"" + piece.strip() + "\"");
      }
      Set<Metal> metals = EnumSet.noneOf(Metal.class);
      for (String symbol : words[0].split("\\+", -1)) {
        metals.add(
            Metal.ofCode(symbol)
                .orElseThrow(
                    () -> new IllegalArgumentException("unknown metal \"" + symbol + "\"")));
      }
      BigDecimal share;
      try {
        share = new BigDecimal(words[1]);
      } catch (NumberFormatException notANumber) {
        throw new IllegalArgumentException(
            "\"" + words[1] + "\" is no number of parts per thousand", notANumber);
      }
      parts.add(new Part(metals, new Fineness(share)));
    }
    return of(parts);
  }

  public List<Part> parts() {
    return parts;
  }

  /** The share of a metal, where the source states it by itself. */
  public Optional<Fineness> fineness(Metal metal) {
    return Optional.ofNullable(known.get(metal));
  }

  /** The metals whose share is stated by itself, in the order of {@link Metal}. */
  public Set<Metal> metals() {
    return known.keySet();
  }

  /** The precious metal with the largest stated share, if there is one. */
  public Optional<Metal> mainPreciousMetal() {
    Metal main = null;
    for (Map.Entry<Metal, Fineness> entry : known.entrySet()) {
      if (entry.getKey().isPrecious()
          && (main == null || entry.getValue().compareTo(known.get(main)) > 0)) {
        main = entry.getKey();
      }
    }
    return Optional.ofNullable(main);
  }

  /** Parts per thousand that no part names. */
  public BigDecimal unnamedPerMille() {
    BigDecimal sum = BigDecimal.ZERO;
    for (Part part : parts) {
      sum = sum.add(part.share().perMille());
    }
    return Decimals.normal(THOUSAND.subtract(sum));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Composition that && that.parts.equals(parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  /** The form that {@link #parse} reads. */
  @Override
  public String toString() {
    StringJoiner joined = new StringJoiner("; ");
    parts.forEach(part -> joined.add(part.toString()));
    return joined.toString();
  }
}
