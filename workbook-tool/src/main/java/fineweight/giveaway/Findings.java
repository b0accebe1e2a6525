package fineweight.giveaway;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What was taken out and what is left for the owner to look at; filled while a copy is made. */
public final class Findings {
  private final Map<String, Integer> removed = new LinkedHashMap<>();
  private final Map<String, Set<String>> left = new LinkedHashMap<>();

  void removed(String what) {
    removed.merge(what, 1, Integer::sum);
  }

  /**
   * @param what the kind of thing, such as "name of a sheet"
   */
  void left(String what, String words) {
    left.computeIfAbsent(what, none -> new LinkedHashSet<>()).add(words);
  }

  /** What was taken out, each with how often, in the order of finding. */
  public List<String> removals() {
    List<String> lines = new ArrayList<>();
    removed.forEach((what, times) -> lines.add(times == 1 ? what : what + " (" + times + ")"));
    return lines;
  }

  /** What stayed and could still say something about its owner, by kind. */
  public Map<String, Set<String>> left() {
    return left;
  }
}
