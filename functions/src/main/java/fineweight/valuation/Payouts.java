package fineweight.valuation;

import fineweight.metal.Metal;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;

/**
 * The collector's own payouts, per metal and, where he keeps them apart, per class of pieces (a
 * word of his, such as {@code bullion} or {@code 90 %}). Immutable.
 */
public final class Payouts {
  private final Map<Key, Payout> byKey;

  private record Key(Metal metal, String pieceClass) {}

  private Payouts(Map<Key, Payout> byKey) {
    this.byKey = Map.copyOf(byKey);
  }

  /** Everything at full melt. */
  public static Payouts atMelt() {
    return new Payouts(Map.of());
  }

  /** These payouts, with another one for a metal in every class that has none of its own. */
  public Payouts with(Metal metal, Payout payout) {
    return with(metal, "", payout);
  }

  /** These payouts, with another one for a metal in one class of pieces. */
  public Payouts with(Metal metal, String pieceClass, Payout payout) {
    Map<Key, Payout> changed = new HashMap<>(byKey);
    changed.put(
        new Key(Objects.requireNonNull(metal, "metal"), pieceClass),
        Objects.requireNonNull(payout, "payout"));
    return new Payouts(changed);
  }

  /** Whether a class of pieces has a payout of its own for some metal. */
  public boolean knows(String pieceClass) {
    return byKey.keySet().stream().anyMatch(key -> key.pieceClass().equals(pieceClass));
  }

  /** The payout of the class, else of the metal, else full melt. */
  public Payout of(Metal metal, String pieceClass) {
    Payout ofMetal = byKey.getOrDefault(new Key(metal, ""), Payout.full());
    return byKey.getOrDefault(new Key(metal, pieceClass), ofMetal);
  }
}
