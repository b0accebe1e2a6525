package fineweight.typeset;

import fineweight.standard.CoinStandard;
import fineweight.standard.Years;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * One place in a set. Immutable.
 *
 * @param key the place's own key within its set
 * @param name in the trade's words
 * @param origin which coins it is for
 * @param years the dates that fill it
 * @param mints the mint marks that fill it, in capitals, an empty one for none; an empty list for
 *     any
 */
public record TypeEntry(String key, String name, Origin origin, Years years, List<String> mints) {
  /**
   * Which coins a place is for.
   *
   * @param country ISO 3166 code or the name of a former issuer
   * @param denomination in the trade's words
   * @param standards the ids of the standards that fill it; empty for all of the country and
   *     denomination
   */
  public record Origin(String country, String denomination, List<String> standards) {
    public Origin {
      Objects.requireNonNull(country, "country");
      Objects.requireNonNull(denomination, "denomination");
      standards = List.copyOf(standards);
    }

    boolean fits(CoinStandard standard) {
      if (!standards.isEmpty()) {
        return standards.contains(standard.id());
      }
      return standard.issue().country().equals(country)
          && standard.issue().denominations().stream().anyMatch(denomination::equalsIgnoreCase);
    }
  }

  /**
   * @throws IllegalArgumentException if the key is empty
   */
  public TypeEntry {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(origin, "origin");
    Objects.requireNonNull(years, "years");
    mints = List.copyOf(mints);
    if (key.isBlank()) {
      throw new IllegalArgumentException("a place in a set needs a key");
    }
  }

  /** The denomination and the name, as a person says them. */
  public String words() {
    return origin.denomination() + ", " + name;
  }

  /** Whether a piece may fill this place, as far as is known of it. */
  boolean mayHold(CollectedPiece piece) {
    if (piece.type().isPresent()) {
      return isNamed(piece.type().get());
    }
    return piece.standards().stream()
            .anyMatch(
                standard ->
                    origin.fits(standard)
                        && (piece.year().isPresent()
                            ? years.contains(piece.year().getAsInt())
                            : years.overlaps(possibleYears(piece, standard))))
        && (mints.isEmpty() || piece.mint().isEmpty() || mints.contains(piece.mint().get()));
  }

  /**
   * Whether a piece fills this place for certain: whatever of its coin, date and mint is still open
   * makes no difference.
   */
  boolean surelyHolds(CollectedPiece piece) {
    if (piece.type().isPresent()) {
      return isNamed(piece.type().get());
    }
    return piece.standards().stream()
        .allMatch(
            standard ->
                origin.fits(standard)
                    && holdsItsDate(piece, standard)
                    && holdsItsMint(piece, standard));
  }

  private boolean holdsItsDate(CollectedPiece piece, CoinStandard standard) {
    return piece.year().isPresent()
        ? years.contains(piece.year().getAsInt())
        : years.cover(possibleYears(piece, standard));
  }

  /** Those of the coin, or those in which its mint mark occurs. */
  private static Years possibleYears(CollectedPiece piece, CoinStandard standard) {
    return piece.mint().flatMap(standard.issue().mints()::yearsOf).orElse(standard.issue().years());
  }

  private boolean holdsItsMint(CollectedPiece piece, CoinStandard standard) {
    return mints.isEmpty()
        || piece
            .mint()
            .map(mints::contains)
            .orElseGet(() -> standard.issue().mints().onlyOf(mints, piece.year()));
  }

  private boolean isNamed(String wanted) {
    String plain = wanted.strip().toLowerCase(Locale.ROOT);
    return plain.equals(key.toLowerCase(Locale.ROOT))
        || plain.equals(words().toLowerCase(Locale.ROOT));
  }
}
