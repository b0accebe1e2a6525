package fineweight.workbook.validity;

import fineweight.workbook.oracle.parts.PackageParts;
import fineweight.workbook.oracle.parts.XmlElement;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The styles part.
 *
 * @param cellFormats how many entries {@code cellXfs} has; 1 without a styles part
 */
record StyleRules(int cellFormats) {
  private static final Map<String, String> LISTS =
      Map.of(
          "numFmts", "numFmt",
          "fonts", "font",
          "fills", "fill",
          "borders", "border",
          "cellStyleXfs", "xf",
          "cellXfs", "xf",
          "cellStyles", "cellStyle",
          "dxfs", "dxf");

  static StyleRules check(PackageParts parts, List<String> findings) throws IOException {
    Optional<String> part = parts.related("styles");
    if (part.isEmpty()) {
      return new StyleRules(1);
    }
    XmlElement styles = parts.tree(part.get());
    ElementOrder.check(part.get(), styles, ElementOrder.STYLES, findings);
    for (XmlElement list : styles.children()) {
      if (LISTS.containsKey(list.name())) {
        ElementOrder.checkCount(part.get(), list, LISTS.get(list.name()), findings);
      }
    }
    checkFormats(part.get(), styles, findings);
    for (String list : List.of("cellStyleXfs", "cellXfs")) {
      int number = 0;
      for (XmlElement xf : all(styles, list, "xf")) {
        String where = part.get() + ": " + list + " " + number++ + ": ";
        inRange(xf, "fontId", all(styles, "fonts", "font").size(), where, findings);
        inRange(xf, "fillId", all(styles, "fills", "fill").size(), where, findings);
        inRange(xf, "borderId", all(styles, "borders", "border").size(), where, findings);
        if (list.equals("cellXfs")) {
          inRange(xf, "xfId", all(styles, "cellStyleXfs", "xf").size(), where, findings);
        }
        checkFormat(xf, styles, where, findings);
      }
    }
    return new StyleRules(Math.max(1, all(styles, "cellXfs", "xf").size()));
  }

  private static void checkFormats(String part, XmlElement styles, List<String> findings) {
    Set<String> ids = new HashSet<>();
    for (XmlElement format : all(styles, "numFmts", "numFmt")) {
      WorkbookRules.unique(ids, format.get("numFmtId"), part + ": number format", findings);
    }
  }

  private static void checkFormat(
      XmlElement xf, XmlElement styles, String where, List<String> findings) {
    String id = xf.get("numFmtId");
    boolean own = !id.isEmpty() && Integer.parseInt(id) >= 164;
    if (own
        && all(styles, "numFmts", "numFmt").stream()
            .noneMatch(each -> each.get("numFmtId").equals(id))) {
      findings.add(where + "no number format " + id);
    }
  }

  private static void inRange(
      XmlElement xf, String attribute, int size, String where, List<String> findings) {
    String value = xf.get(attribute);
    if (!value.isEmpty() && Integer.parseInt(value) >= Math.max(1, size)) {
      findings.add(where + attribute + " " + value + " is beyond the last, " + (size - 1));
    }
  }

  private static List<XmlElement> all(XmlElement styles, String list, String child) {
    return styles.child(list).map(each -> each.all(child)).orElse(List.of());
  }
}
