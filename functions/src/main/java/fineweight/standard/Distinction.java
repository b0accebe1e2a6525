package fineweight.standard;

import java.util.List;

/**
 * What separates a standard from others of the same country, denomination and date. Immutable.
 *
 * @param variant in words, for a person with the coin in hand; may be empty
 * @param onlyIf the standard is thought of only when a description holds one of these; empty for
 *     always. Collectors' issues beside a circulating coin have it
 * @param tells a description that holds one of these means this standard and none without it
 */
public record Distinction(String variant, List<Tell> onlyIf, List<Tell> tells) {
  public Distinction {
    onlyIf = List.copyOf(onlyIf);
    tells = List.copyOf(tells);
  }
}
