package fineweight.workbook.xlsx;

import fineweight.workbook.xlsx.part.Relationships;
import fineweight.workbook.xlsx.xml.DamageException;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Which parts are reached through relationships, and which are not any more once some are cut: a
 * sheet that goes takes its drawing, charts and notes with it, but nothing that others use too.
 */
final class Reach {
  private final OpenedPackage source;
  private final Map<String, Set<String>> targets = new HashMap<>();
  private final Map<String, Set<String>> cut = new HashMap<>();

  Reach(OpenedPackage source) {
    this.source = source;
  }

  /** Part {@code from} shall not point to {@code to} any more. */
  void cut(String from, String to) {
    cut.computeIfAbsent(key(from), k -> new HashSet<>()).add(key(to));
  }

  private static String key(String part) {
    return part.toLowerCase(Locale.ROOT);
  }

  /** The parts, as the container spells them, that nothing points to any more. */
  Set<String> lost() throws IOException {
    Set<String> lost = new LinkedHashSet<>();
    if (cut.isEmpty()) {
      return lost;
    }
    Set<String> before = reached(Map.of());
    before.removeAll(reached(cut));
    for (String part : source.zip().parts()) {
      if (before.contains(key(part))) {
        lost.add(part);
      }
    }
    return lost;
  }

  private Set<String> reached(Map<String, Set<String>> without) throws IOException {
    Set<String> reached = new HashSet<>(Set.of(""));
    Deque<String> open = new ArrayDeque<>(reached);
    while (!open.isEmpty()) {
      String part = open.pop();
      for (String target : targets(part)) {
        if (!without.getOrDefault(part, Set.of()).contains(target) && reached.add(target)) {
          open.push(target);
        }
      }
    }
    return reached;
  }

  private Set<String> targets(String part) throws IOException {
    Set<String> known = targets.get(part);
    if (known == null) {
      known = readTargets(part);
      targets.put(part, known);
    }
    return known;
  }

  private Set<String> readTargets(String part) throws IOException {
    Set<String> found = new LinkedHashSet<>();
    try {
      for (Relationships.Target each : source.relationshipsOf(part).all()) {
        if (source.zip().has(each.part())) {
          found.add(key(each.part()));
        }
      }
    } catch (DamageException e) {
      // A damaged list of the owner's leads nowhere, before and after: what is there stays.
      found.clear();
    }
    return found;
  }
}
