package fineweight.workbook.oracle;

import fineweight.workbook.oracle.parts.XmlElement;

/**
 * One thing that is not as it was, before anybody has judged it.
 *
 * @param part the package part
 * @param role what kind of part it is
 * @param sheet the sheet's name if the part is a sheet or belongs to one; else empty
 * @param path where in the part, such as {@code /worksheet/sheetData/row[5]/c[B5]}
 * @param attribute for {@link Kind#ATTRIBUTE} its name; else empty
 * @param before the element before, null if there was none (for a whole part always null)
 * @param after the element after, null if there is none
 * @param atEnd for {@link Kind#ADDED}: whether nothing of the old stands behind it
 */
record Difference(
    String part,
    PartRole role,
    String sheet,
    Kind kind,
    String path,
    String attribute,
    XmlElement before,
    XmlElement after,
    boolean atEnd) {

  enum Kind {
    PART_GONE,
    PART_NEW,
    PART_BYTES,
    PART_ORDER,
    NAME,
    ATTRIBUTE,
    TEXT,
    ADDED,
    REMOVED,
    ORDER,
    CELL
  }

  enum PartRole {
    WORKBOOK,
    WORKBOOK_RELATIONS,
    CONTENT_TYPES,
    SHEET,
    OWN_SHEET,
    SHARED_STRINGS,
    STYLES,
    TABLE,
    CALC_CHAIN,
    OTHER
  }

  static Difference ofPart(String part, PartRole role, Kind kind) {
    return new Difference(part, role, "", kind, "", "", null, null, false);
  }

  String beforeValue() {
    return before == null ? "" : before.get(attribute);
  }

  String afterValue() {
    return after == null ? "" : after.get(attribute);
  }

  boolean is(PartRole wantedRole, Kind wantedKind) {
    return role == wantedRole && kind == wantedKind;
  }

  /** The element that came or went, or the one before. */
  XmlElement element() {
    return after == null ? before : after;
  }

  @Override
  public String toString() {
    StringBuilder words = new StringBuilder(part).append(": ").append(kind).append(' ');
    words.append(path);
    if (!attribute.isEmpty()) {
      words.append('@').append(attribute).append(": ");
      words.append(beforeValue()).append(" -> ").append(afterValue());
    } else if (before != null || after != null) {
      words.append(": ").append(shown(before)).append(" -> ").append(shown(after));
    }
    return words.toString();
  }

  private static String shown(XmlElement element) {
    if (element == null) {
      return "nothing";
    }
    String all = element.attributes() + " " + element.allText();
    return element.name() + (all.length() > 120 ? all.substring(0, 120) + "..." : all);
  }
}
