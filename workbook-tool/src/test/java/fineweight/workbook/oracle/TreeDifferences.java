package fineweight.workbook.oracle;

import fineweight.workbook.oracle.Difference.Kind;
import fineweight.workbook.oracle.parts.XmlElement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/** Walks two trees side by side and notes everything that is not the same. */
final class TreeDifferences {
  /** Attributes that hold text: there "1" and "true" are two different things. */
  private static final Set<String> TEXTS =
      Set.of(
          "name",
          "displayName",
          "prompt",
          "promptTitle",
          "error",
          "errorTitle",
          "formatCode",
          "comment",
          "description",
          "uniqueName",
          "location",
          "tooltip",
          "display",
          "r",
          "s",
          "v",
          "t");

  /** What tells one child from its brothers, by the child's name. */
  private static final Map<String, String> KEYS =
      Map.of(
          "row", "r",
          "c", "r",
          "sheet", "name",
          "Relationship", "Id",
          "Override", "PartName",
          "Default", "Extension",
          "col", "min");

  private final String part;
  private final Difference.PartRole role;
  private final String sheet;
  private final List<Difference> found = new ArrayList<>();

  private TreeDifferences(String part, Difference.PartRole role, String sheet) {
    this.part = part;
    this.role = role;
    this.sheet = sheet;
  }

  static List<Difference> between(
      String part, Difference.PartRole role, String sheet, XmlElement before, XmlElement after) {
    TreeDifferences walk = new TreeDifferences(part, role, sheet);
    walk.compare("/" + before.name(), before, after);
    return walk.found;
  }

  private void compare(String path, XmlElement before, XmlElement after) {
    if (!before.name().equals(after.name())
        || !Objects.equals(before.namespace(), after.namespace())) {
      note(Kind.NAME, path, "", before, after, false);
      return;
    }
    if (before.name().equals("c") && path.contains("/row[")) {
      if (!before.equals(after)) {
        note(Kind.CELL, path, "", before, after, false);
      }
      return;
    }
    compareAttributes(path, before, after);
    if (!before.text().equals(after.text())
        && !(before.name().equals("styleSheet") && before.text().isBlank())) {
      note(Kind.TEXT, path, "", before, after, false);
    }
    compareChildren(path, before, after);
  }

  private void compareAttributes(String path, XmlElement before, XmlElement after) {
    Set<String> names = new TreeSet<>(before.attributes().keySet());
    names.addAll(after.attributes().keySet());
    for (String name : names) {
      String old = before.attributes().get(name);
      String now = after.attributes().get(name);
      if (!same(name, old, now)) {
        note(Kind.ATTRIBUTE, path, name, before, after, false);
      }
    }
  }

  private static boolean same(String name, String old, String now) {
    if (old == null || now == null) {
      return old == null && now == null;
    }
    return old.equals(now) || (!TEXTS.contains(name) && truth(old).equals(truth(now)));
  }

  private static String truth(String value) {
    return switch (value) {
      case "true" -> "1";
      case "false" -> "0";
      default -> value;
    };
  }

  private void compareChildren(String path, XmlElement before, XmlElement after) {
    Map<String, XmlElement> old = keyed(before);
    Map<String, XmlElement> now = keyed(after);
    List<String> keptBefore = old.keySet().stream().filter(now::containsKey).toList();
    List<String> keptAfter = now.keySet().stream().filter(old::containsKey).toList();
    if (!keptBefore.equals(keptAfter)) {
      note(Kind.ORDER, path, "", before, after, false);
    }
    old.forEach(
        (key, element) -> {
          if (now.containsKey(key)) {
            compare(path + "/" + key, element, now.get(key));
          } else {
            note(Kind.REMOVED, path + "/" + key, "", element, null, false);
          }
        });
    List<String> order = List.copyOf(now.keySet());
    int lastKept = keptAfter.isEmpty() ? -1 : order.indexOf(keptAfter.get(keptAfter.size() - 1));
    for (int i = 0; i < order.size(); i++) {
      if (!old.containsKey(order.get(i))) {
        XmlElement added = now.get(order.get(i));
        note(Kind.ADDED, path + "/" + order.get(i), "", null, added, i > lastKept);
      }
    }
  }

  private static Map<String, XmlElement> keyed(XmlElement parent) {
    Map<String, XmlElement> keyed = new LinkedHashMap<>();
    Map<String, Integer> counts = new HashMap<>();
    for (XmlElement child : parent.children()) {
      String key = key(child);
      int count = counts.merge(key, 1, Integer::sum);
      boolean named = key.endsWith("]");
      keyed.put(named && count == 1 ? key : key + "[" + (count - 1) + "]", child);
    }
    return keyed;
  }

  private static String key(XmlElement child) {
    if (child.name().equals("definedName")) {
      return "definedName[" + child.get("name") + "@" + child.get("localSheetId") + "]";
    }
    String attribute = KEYS.get(child.name());
    boolean has = attribute != null && child.attributes().containsKey(attribute);
    return has ? child.name() + "[" + child.get(attribute) + "]" : child.name();
  }

  private void note(
      Kind kind, String path, String attribute, XmlElement old, XmlElement now, boolean atEnd) {
    found.add(new Difference(part, role, sheet, kind, path, attribute, old, now, atEnd));
  }
}
