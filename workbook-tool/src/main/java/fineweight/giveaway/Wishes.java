package fineweight.giveaway;

import java.util.Set;

/**
 * What the owner has looked at and wants to stay. Immutable.
 *
 * @param words exact texts that stay in lists, formulas and labels
 * @param sheets sheets of which every word and number stays, such as lists for drop-downs
 * @param messages whether the hints and error messages of checked cells stay
 */
public record Wishes(Set<String> words, Set<String> sheets, boolean messages) {
  public static final Wishes NONE = new Wishes(Set.of(), Set.of(), false);

  public Wishes {
    words = Set.copyOf(words);
    sheets = Set.copyOf(sheets);
  }
}
