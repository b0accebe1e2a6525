package fineweight.workbook.oracle;

import fineweight.workbook.CellPlace;
import fineweight.workbook.oracle.Difference.Kind;
import fineweight.workbook.oracle.Difference.PartRole;
import fineweight.workbook.oracle.formula.DependencyWalk;
import fineweight.workbook.oracle.parts.PackageParts;
import fineweight.workbook.oracle.parts.RawZip;
import fineweight.workbook.oracle.parts.XmlElement;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Tells whether an edit of a workbook changed anything that it had no business with. Reads both
 * files as plain zip and XML and shares no code with the writer.
 */
public final class Oracle {
  private final PackageParts before;
  private final PackageParts after;
  private final Expected expected;
  private final SheetCells cellsBefore;
  private final List<Difference> found = new ArrayList<>();

  private Oracle(PackageParts before, PackageParts after, Expected expected) {
    this.before = before;
    this.after = after;
    this.expected = expected;
    this.cellsBefore = new SheetCells(before);
  }

  /** One sentence for everything that is not as it should be; an empty list is a pass. */
  public static List<String> findings(Path before, Path after, Expected expected)
      throws IOException {
    return new Oracle(
            new PackageParts(RawZip.of(before)), new PackageParts(RawZip.of(after)), expected)
        .judge();
  }

  static List<String> findings(byte[] before, byte[] after, Expected expected) throws IOException {
    return new Oracle(
            new PackageParts(RawZip.of(before)), new PackageParts(RawZip.of(after)), expected)
        .judge();
  }

  private List<String> judge() throws IOException {
    Map<String, PartRole> roles = roles(before);
    roles(after).forEach((part, role) -> roles.putIfAbsent(part, role));
    compareParts(roles);
    DependencyWalk walk = new DependencyWalk(before, after);
    Set<CellPlace> possible = possible(walk);
    CellJudge cells = new CellJudge(expected, possible, walk.calling("FINEWEIGHT."));
    Set<String> partsAfter = after.zip().entries().keySet();
    Set<String> newParts = new HashSet<>(partsAfter);
    newParts.removeAll(before.zip().entries().keySet());
    Set<String> goneParts = new HashSet<>(before.zip().entries().keySet());
    goneParts.removeAll(partsAfter);
    goneParts.removeIf(each -> roles.get(each) != PartRole.OWN_SHEET);
    Comparison comparison =
        new Comparison(expected, cells, new StructureJudge(expected, newParts, goneParts));
    List<String> findings = new ArrayList<>();
    for (Difference difference : found) {
      if (AllowedDifference.of(difference, comparison).isEmpty()) {
        findings.add(difference.toString());
      }
    }
    if (expected.exact()) {
      findings.addAll(compareLists(walk, cells));
    }
    return findings;
  }

  private Set<CellPlace> possible(DependencyWalk walk) {
    if (!expected.exact()) {
      return expected.listed();
    }
    Set<CellPlace> own = new HashSet<>(expected.listed());
    Set<CellPlace> calling = walk.calling("FINEWEIGHT.");
    own.removeIf(each -> !expected.owns(each) && !calling.contains(each));
    return walk.possible(own, expected.areas(), expected.names());
  }

  /** The dry run's list, what really changed and what had to change must be one and the same. */
  private List<String> compareLists(DependencyWalk walk, CellJudge cells) throws IOException {
    List<String> findings = new ArrayList<>();
    Set<CellPlace> changed = new LinkedHashSet<>(cells.changedOwn());
    changed.addAll(cells.renewed());
    Set<CellPlace> seeds = new HashSet<>(changed);
    expected.listed().stream().filter(each -> expected.ownsSheet(each.sheet())).forEach(seeds::add);
    for (CellPlace place : walk.certain(seeds, changedNames())) {
      if (!expected.owns(place)
          && !cells.calls(place)
          && !cells.dropped().contains(place)
          && hasResult(place)) {
        findings.add("stale result kept in " + place);
      }
    }
    changed.addAll(cells.dropped());
    for (CellPlace place : expected.listed()) {
      boolean silent = expected.ownsSheet(place.sheet()) || !hasCells(place.sheet());
      if (!silent && !changed.contains(place) && !(isFormula(place) && !hasResult(place))) {
        findings.add("listed but not changed: " + place);
      }
    }
    return findings;
  }

  private Set<String> changedNames() throws IOException {
    Set<XmlElement> old = new HashSet<>(before.definedNames());
    Set<String> changed = new HashSet<>();
    for (XmlElement name : after.definedNames()) {
      if (expected.ownsName(name) && !old.contains(name)) {
        changed.add(Expected.lower(name.get("name")));
      }
    }
    return changed;
  }

  private boolean hasCells(String sheet) {
    return before.sheets().stream().anyMatch(each -> each.name().equals(sheet) && each.isTable());
  }

  private boolean hasResult(CellPlace place) throws IOException {
    return cellsBefore.cell(place).child("v").isPresent();
  }

  private boolean isFormula(CellPlace place) throws IOException {
    return cellsBefore.cell(place).child("f").isPresent();
  }

  private Map<String, PartRole> roles(PackageParts parts) throws IOException {
    Map<String, PartRole> roles = new HashMap<>();
    roles.put("[Content_Types].xml", PartRole.CONTENT_TYPES);
    roles.put(parts.workbookPart(), PartRole.WORKBOOK);
    roles.put(PackageParts.relationsPart(parts.workbookPart()), PartRole.WORKBOOK_RELATIONS);
    parts.related("sharedStrings").ifPresent(part -> roles.put(part, PartRole.SHARED_STRINGS));
    parts.related("styles").ifPresent(part -> roles.put(part, PartRole.STYLES));
    parts.related("calcChain").ifPresent(part -> roles.put(part, PartRole.CALC_CHAIN));
    for (PackageParts.Sheet sheet : parts.sheets()) {
      if (sheet.isTable()) {
        boolean own = expected.ownsSheet(sheet.name());
        roles.put(sheet.part(), own ? PartRole.OWN_SHEET : PartRole.SHEET);
        parts.tables(sheet).forEach(part -> roles.put(part, PartRole.TABLE));
      }
    }
    for (PackageParts.Sheet sheet : parts.sheets()) {
      if (expected.ownsSheet(sheet.name())) {
        below(parts, sheet.part(), roles);
      }
    }
    return roles;
  }

  /** Drawings and charts of a sheet of ours are ours, as long as nobody else's. */
  private static void below(PackageParts parts, String part, Map<String, PartRole> roles)
      throws IOException {
    if (parts.zip().entries().containsKey(PackageParts.relationsPart(part))) {
      roles.putIfAbsent(PackageParts.relationsPart(part), PartRole.OWN_SHEET);
    }
    for (PackageParts.Relation relation : parts.relations(part)) {
      boolean inside = parts.zip().entries().containsKey(relation.target());
      if (inside && roles.putIfAbsent(relation.target(), PartRole.OWN_SHEET) == null) {
        below(parts, relation.target(), roles);
      }
    }
  }

  private void compareParts(Map<String, PartRole> roles) throws IOException {
    Set<String> old = before.zip().entries().keySet();
    Set<String> now = after.zip().entries().keySet();
    List<String> keptBefore = old.stream().filter(now::contains).toList();
    List<String> keptAfter = now.stream().filter(old::contains).toList();
    if (!keptBefore.equals(keptAfter)) {
      found.add(Difference.ofPart("package", PartRole.OTHER, Kind.PART_ORDER));
    }
    for (String part : now) {
      after.zip().entries().get(part).content();
      PartRole role = roles.getOrDefault(part, PartRole.OTHER);
      if (!old.contains(part)) {
        found.add(Difference.ofPart(part, role, Kind.PART_NEW));
      }
    }
    for (String part : old) {
      PartRole role = roles.getOrDefault(part, PartRole.OTHER);
      if (!now.contains(part)) {
        found.add(Difference.ofPart(part, role, Kind.PART_GONE));
      } else if (!before.zip().entries().get(part).sameBytes(after.zip().entries().get(part))) {
        comparePart(part, role);
      }
    }
  }

  private void comparePart(String part, PartRole role) throws IOException {
    if (role == PartRole.OTHER || role == PartRole.CALC_CHAIN) {
      found.add(Difference.ofPart(part, role, Kind.PART_BYTES));
      return;
    }
    if (role == PartRole.OWN_SHEET) {
      return;
    }
    String sheet = sheetOf(part);
    if (expected.exact() && !sheet.isEmpty() && !expected.touches(sheet)) {
      found.add(Difference.ofPart(part, role, Kind.PART_BYTES));
      return;
    }
    XmlElement old = before.tree(part);
    XmlElement now = after.tree(part);
    if (role == PartRole.SHEET) {
      Set<Integer> columns = expected.columns(sheet);
      old = SheetForm.of(old, columns);
      now = SheetForm.of(now, columns);
    }
    found.addAll(TreeDifferences.between(part, role, sheet, old, now));
  }

  private String sheetOf(String part) throws IOException {
    for (PackageParts.Sheet sheet : before.sheets()) {
      if (sheet.part().equals(part) || before.tables(sheet).contains(part)) {
        return sheet.name();
      }
    }
    return "";
  }
}
