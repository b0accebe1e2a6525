package fineweight.giveaway;

import fineweight.workbook.SheetLayout;
import fineweight.workbook.SheetSummary.Visibility;
import fineweight.workbook.xlsx.part.CellRef;
import fineweight.workbook.xlsx.part.WorkbookPart;
import fineweight.workbook.xlsx.xml.Element;
import fineweight.workbook.xlsx.xml.XmlText;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The defined names that look at cells which are still there. */
final class DefinedNames {
  private static final Pattern AREA =
      Pattern.compile(
          "(?:'((?:[^']|'')+)'|([\\p{L}\\p{N}_.]+))!(\\$?[A-Z]{1,3}\\$?[0-9]{1,7}(?::\\$?[A-Z]{1,3}\\$?[0-9]{1,7})?)");

  private final WorkbookPart workbook;
  private final FormulaRules formulas;
  private final Findings findings;
  private final List<Element> kept = new ArrayList<>();
  private final List<WorkbookPart.Sheet> places = new ArrayList<>();

  DefinedNames(WorkbookPart workbook, FormulaRules formulas, Findings findings) {
    this.workbook = workbook;
    this.formulas = formulas;
    this.findings = findings;
  }

  /** A name may speak of another, so a name that goes may take others with it. */
  void choose() {
    List<Element> open = new ArrayList<>(workbook.definedNames());
    boolean more = true;
    while (more) {
      more = false;
      for (Element each : List.copyOf(open)) {
        if (stays(each)) {
          open.remove(each);
          kept.add(each);
          formulas.addName(each.get("name"));
          more = true;
        }
      }
    }
    open.forEach(gone -> findings.removed("defined name that looks at no cell of the sheets"));
    kept.stream()
        .map(each -> each.get("name"))
        .filter(name -> !name.startsWith("_xlnm."))
        .forEach(name -> findings.left("defined name", name));
  }

  private boolean stays(Element each) {
    String name = each.get("name");
    boolean builtIn =
        name != null
            && name.matches("(?i)_xlnm\\.(print_area|print_titles)")
            && each.get("localSheetId") != null;
    boolean owners = name != null && !name.matches("(?i)_xl(nm|fn).*");
    return (builtIn || owners) && formulas.objection(each.text()).isEmpty();
  }

  /** The next sheet of the new workbook. */
  void place(WorkbookPart.Sheet sheet) {
    places.add(sheet);
  }

  /** The place of the first sheet that is seen; an office wants one. */
  int firstVisible() {
    for (int i = 0; i < places.size(); i++) {
      if (places.get(i).visibility() == Visibility.VISIBLE) {
        return i;
      }
    }
    return 0;
  }

  /** The element with all names, local ones at the new places of their sheets. */
  String markup() {
    StringBuilder all = new StringBuilder();
    for (Element each : kept) {
      String local = each.get("localSheetId");
      int place = local == null ? 0 : placeOf(local);
      if (place >= 0) {
        all.append("<definedName name=\"" + XmlText.attribute(each.get("name")) + "\"")
            .append(local == null ? "" : " localSheetId=\"" + place + "\"")
            .append(each.flag("hidden", false) ? " hidden=\"1\"" : "")
            .append(">" + XmlText.content(each.text()) + "</definedName>");
      }
    }
    return all.isEmpty() ? "" : "<definedNames>" + all + "</definedNames>";
  }

  private int placeOf(String local) {
    if (!local.matches("[0-9]{1,5}") || Integer.parseInt(local) >= workbook.sheets().size()) {
      return -1;
    }
    return places.indexOf(workbook.sheets().get(Integer.parseInt(local)));
  }

  /** The formula with the sheet on which it stands, where it names only cells. */
  static String placed(String formula, String sheet) {
    return formula.matches("\\$?[A-Z]{1,3}\\$?[0-9]{1,7}(:\\$?[A-Z]{1,3}\\$?[0-9]{1,7})?")
        ? "'" + sheet.replace("'", "''") + "'!" + formula
        : formula;
  }

  /**
   * The areas on a sheet that some formulas look at, directly or by a defined name.
   *
   * @param formulas such as those behind drop-downs
   */
  List<SheetLayout.Area> areasOn(String sheet, List<String> formulas) {
    List<SheetLayout.Area> areas = new ArrayList<>();
    for (String formula : formulas) {
      String text =
          kept.stream()
              .filter(each -> each.get("name").equalsIgnoreCase(formula.strip()))
              .map(Element::text)
              .findFirst()
              .orElse(formula);
      Matcher area = AREA.matcher(text);
      while (area.find()) {
        String name = area.group(1) == null ? area.group(2) : area.group(1).replace("''", "'");
        SheetLayout.Area found = CellRef.area(area.group(3).replace("$", ""));
        if (CellChoice.same(name, sheet) && found != null) {
          areas.add(found);
        }
      }
    }
    return areas;
  }
}
