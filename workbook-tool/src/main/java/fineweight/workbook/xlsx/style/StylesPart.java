package fineweight.workbook.xlsx.style;

import fineweight.workbook.xlsx.xml.ByteEdits;
import fineweight.workbook.xlsx.xml.DamageException;
import fineweight.workbook.xlsx.xml.Element;
import fineweight.workbook.xlsx.xml.Markup;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The part that lists the cell formats, made whole where it lacks a list that formats need. */
public final class StylesPart {
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final Set<String> NAMESPACES =
      Set.of(MAIN, "http://purl.oclc.org/ooxml/spreadsheetml/main");

  /** The first children of the root in the order of the schema. */
  private static final List<String> ORDER =
      List.of("numFmts", "fonts", "fills", "borders", "cellStyleXfs", "cellXfs");

  private static final Map<String, String> NEEDED = new LinkedHashMap<>();

  static {
    NEEDED.put(
        "fonts", "<fonts count=\"1\"><font><sz val=\"11\"/><name val=\"Calibri\"/></font></fonts>");
    NEEDED.put(
        "fills",
        "<fills count=\"2\"><fill><patternFill patternType=\"none\"/></fill>"
            + "<fill><patternFill patternType=\"gray125\"/></fill></fills>");
    NEEDED.put(
        "borders",
        "<borders count=\"1\"><border><left/><right/><top/><bottom/><diagonal/></border>"
            + "</borders>");
    NEEDED.put(
        "cellStyleXfs",
        "<cellStyleXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/>"
            + "</cellStyleXfs>");
    NEEDED.put(
        "cellXfs",
        "<cellXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/>"
            + "</cellXfs>");
  }

  private StylesPart() {}

  /** The part for a workbook that has none. */
  public static Markup fresh() {
    return Markup.of(
        "styles",
        "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n"
            + "<styleSheet xmlns=\"%s\">".formatted(MAIN)
            + String.join("", NEEDED.values())
            + "</styleSheet>");
  }

  /**
   * The owner's part with what it lacks. Its bytes become part of the file only if a format is
   * added.
   */
  public static Markup completed(Markup found) {
    Element root = found.requireRoot("styleSheet").root();
    if (!NAMESPACES.contains(root.namespace())) {
      throw new DamageException(
          "part " + found.part() + " lists formats in a way that no workbook does");
    }
    List<String> missing =
        NEEDED.keySet().stream().filter(list -> root.child(list).isEmpty()).toList();
    if (missing.isEmpty()) {
      return found;
    }
    ByteEdits edits = new ByteEdits(found);
    for (Map.Entry<Integer, String> each : places(root, missing).entrySet()) {
      if (each.getKey() < root.children().size()) {
        edits.insertBefore(root.children().get(each.getKey()), each.getValue());
      } else {
        edits.append(root, each.getValue());
      }
    }
    return Markup.of(found.part(), edits.apply());
  }

  /** The lists that are missing, joined by the number of the child that they belong before. */
  private static Map<Integer, String> places(Element root, List<String> missing) {
    String prefix = root.prefix().isEmpty() ? "" : root.prefix() + ":";
    Map<Integer, String> places = new LinkedHashMap<>();
    for (String list : missing) {
      int place = 0;
      while (place < root.children().size()
          && ORDER.indexOf(root.children().get(place).name()) >= 0
          && ORDER.indexOf(root.children().get(place).name()) < ORDER.indexOf(list)) {
        place++;
      }
      String xml = NEEDED.get(list).replaceAll("<(/?)([a-zA-Z])", "<$1" + prefix + "$2");
      places.merge(place, xml, String::concat);
    }
    return places;
  }
}
