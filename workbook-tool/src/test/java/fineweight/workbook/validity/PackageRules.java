package fineweight.workbook.validity;

import fineweight.workbook.oracle.parts.PackageParts;
import fineweight.workbook.oracle.parts.XmlElement;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Content types and relationships: nothing missing, nothing named that is not there. */
final class PackageRules {
  private static final String TYPES = "[Content_Types].xml";

  private PackageRules() {}

  static void check(PackageParts parts, List<String> findings) throws IOException {
    Set<String> names = parts.zip().entries().keySet();
    Set<String> folded = new HashSet<>();
    for (String name : names) {
      if (!folded.add(name.toLowerCase(Locale.ROOT))) {
        findings.add("two parts are named " + name);
      }
    }
    checkTypes(parts, findings);
    checkRelations(parts, "", findings);
    for (String name : names) {
      if (!name.endsWith(".rels")) {
        checkRelations(parts, name, findings);
      }
    }
  }

  private static void checkTypes(PackageParts parts, List<String> findings) throws IOException {
    Set<String> extensions = new HashSet<>();
    Set<String> overrides = new HashSet<>();
    for (XmlElement each : parts.tree(TYPES).children()) {
      boolean isDefault = each.name().equals("Default");
      String key = each.get(isDefault ? "Extension" : "PartName").toLowerCase(Locale.ROOT);
      if (!(isDefault ? extensions : overrides).add(key)) {
        findings.add(TYPES + ": " + key + " stands twice");
      }
    }
    Set<String> names = new HashSet<>();
    for (String name : parts.zip().entries().keySet()) {
      String part = "/" + name.toLowerCase(Locale.ROOT);
      names.add(part);
      String extension = part.substring(part.lastIndexOf('.') + 1);
      if (!name.equals(TYPES) && !overrides.contains(part) && !extensions.contains(extension)) {
        findings.add(TYPES + ": no type for " + name);
      }
    }
    for (String override : overrides) {
      if (!names.contains(override)) {
        findings.add(TYPES + ": a type for the missing part " + override);
      }
    }
  }

  private static void checkRelations(PackageParts parts, String part, List<String> findings)
      throws IOException {
    Set<String> ids = new HashSet<>();
    for (PackageParts.Relation relation : parts.relations(part)) {
      String from = PackageParts.relationsPart(part);
      if (!ids.add(relation.id())) {
        findings.add(from + ": " + relation.id() + " stands twice");
      }
      boolean inside = !relation.external() && !relation.target().startsWith("#");
      if (inside && !parts.zip().entries().containsKey(relation.target())) {
        findings.add(from + ": no part " + relation.target());
      }
    }
  }
}
