package fineweight.clue;

import java.util.List;

/**
 * A country as said. Immutable.
 *
 * @param keys the issuers of the catalogue it may mean; empty if the catalogue has none of it
 * @param kind {@code ancient} or {@code token} if nothing of it is valued by a standard; {@code
 *     unknown} if the word is not in the word lists; {@code hint} if a ruler or mint points at it;
 *     otherwise empty
 */
public record Issuers(List<String> keys, String kind) {
  public Issuers {
    keys = List.copyOf(keys);
  }
}
