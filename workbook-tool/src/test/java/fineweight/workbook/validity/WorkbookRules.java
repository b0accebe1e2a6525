package fineweight.workbook.validity;

import fineweight.workbook.oracle.parts.PackageParts;
import fineweight.workbook.oracle.parts.XmlElement;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The workbook part: sheets and names. */
final class WorkbookRules {
  private WorkbookRules() {}

  static void check(PackageParts parts, List<String> findings) throws IOException {
    String part = parts.workbookPart();
    XmlElement workbook = parts.tree(part);
    ElementOrder.check(part, workbook, ElementOrder.WORKBOOK, findings);
    Set<String> names = new HashSet<>();
    Set<String> ids = new HashSet<>();
    Set<String> targets = new HashSet<>();
    for (PackageParts.Sheet sheet : parts.sheets()) {
      unique(names, sheet.name().toLowerCase(Locale.ROOT), part + ": sheet name", findings);
      unique(ids, sheet.id(), part + ": sheet id", findings);
      unique(targets, sheet.part(), part + ": sheet part", findings);
      if (sheet.name().isEmpty()
          || sheet.name().length() > 31
          || sheet.name().matches(".*[:\\\\/?*\\[\\]].*")) {
        findings.add(part + ": no sheet may be named " + sheet.name());
      }
    }
    checkNames(parts, findings);
    boolean seen = parts.sheets().stream().anyMatch(each -> each.state().equals("visible"));
    if (!seen) {
      findings.add(part + ": no visible sheet");
    }
  }

  private static void checkNames(PackageParts parts, List<String> findings) throws IOException {
    String part = parts.workbookPart();
    Set<String> names = new HashSet<>();
    for (XmlElement name : parts.definedNames()) {
      String scope = name.get("localSheetId");
      String key = name.get("name").toLowerCase(Locale.ROOT) + "@" + scope;
      unique(names, key, part + ": defined name", findings);
      if (!scope.isEmpty() && Integer.parseInt(scope) >= parts.sheets().size()) {
        findings.add(part + ": sheet " + scope + " of name " + name.get("name") + " is missing");
      }
      if (!name.get("name").matches("[\\p{L}_\\\\][\\p{L}\\p{N}_.\\\\?]*")
          || name.get("name").matches("[A-Za-z]{1,3}[0-9]{1,7}")) {
        findings.add(part + ": " + name.get("name") + " is no name");
      }
    }
  }

  static void unique(Set<String> seen, String key, String what, List<String> findings) {
    if (!seen.add(key)) {
      findings.add(what + " stands twice: " + key);
    }
  }
}
