package fineweight.typeset;

import fineweight.metal.FineContent;
import fineweight.spot.SpotPrices;
import fineweight.standard.CoinStandard;
import fineweight.standard.Standards;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.joda.money.BigMoney;

/**
 * The places of a set in their order. Immutable.
 *
 * @param name of the set
 * @param entries its places
 */
public record TypeSet(String name, List<TypeEntry> entries) {
  private static final String US_TYPES = "us-types.csv";

  /**
   * @throws IllegalArgumentException if two places have the same key
   */
  public TypeSet {
    Objects.requireNonNull(name, "name");
    entries = List.copyOf(entries);
    Set<String> keys = new HashSet<>();
    for (TypeEntry entry : entries) {
      if (!keys.add(entry.key())) {
        throw new IllegalArgumentException("the key " + entry.key() + " stands twice in " + name);
      }
    }
  }

  /**
   * The set that comes with the product: one coin of each design for circulation of the United
   * States, from 1792 on, split where the metal was changed and can be seen or is told by the date.
   */
  public static TypeSet unitedStates() {
    InputStream bytes =
        Objects.requireNonNull(TypeSet.class.getResourceAsStream(US_TYPES), US_TYPES);
    try (BufferedReader text =
        new BufferedReader(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
      return TypeSetFile.read("United States by design", US_TYPES, text);
    } catch (IOException failed) {
      throw new UncheckedIOException("cannot read " + US_TYPES, failed);
    }
  }

  /** The places that a piece may fill: none, one, or several where its words leave it open. */
  public List<TypeEntry> placesFor(CollectedPiece piece) {
    return entries.stream().filter(entry -> entry.mayHold(piece)).toList();
  }

  /**
   * The least melt that a coin for a place has: the metal floor of a hole. Coins whose metal has no
   * price count nothing.
   *
   * @return empty if no standard for it is known
   */
  public static Optional<BigMoney> metalFloor(
      TypeEntry entry, Standards standards, SpotPrices spots) {
    Optional<BigMoney> floor = Optional.empty();
    for (CoinStandard standard : standards.all()) {
      boolean fits =
          entry.origin().fits(standard) && standard.issue().years().overlaps(entry.years());
      if (fits) {
        FineContent content = standard.fineContent();
        BigMoney melt = spots.melt(content);
        floor = Optional.of(floor.filter(lowest -> lowest.isLessThan(melt)).orElse(melt));
      }
    }
    return floor;
  }
}
