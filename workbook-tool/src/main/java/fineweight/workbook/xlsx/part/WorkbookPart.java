package fineweight.workbook.xlsx.part;

import fineweight.workbook.NamedCell;
import fineweight.workbook.SheetSummary.Visibility;
import fineweight.workbook.xlsx.xml.DamageException;
import fineweight.workbook.xlsx.xml.Element;
import fineweight.workbook.xlsx.xml.Markup;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The list of sheets and names. */
public final class WorkbookPart {
  private static final String STRICT = "http://purl.oclc.org/ooxml/";

  private final Markup markup;
  private final List<Sheet> sheets = new ArrayList<>();

  /**
   * @param part where the sheet's content stands
   * @param isTable whether it is a worksheet and no chart, dialog or macro sheet
   */
  public record Sheet(
      String name, int id, Visibility visibility, String part, boolean isTable, Element element) {}

  public WorkbookPart(Markup markup, Relationships relationships) {
    this.markup = markup.requireRoot("workbook");
    Set<String> names = new HashSet<>();
    Set<String> parts = new HashSet<>();
    Element list =
        root().child("sheets").orElseThrow(() -> new DamageException("it lists no sheets"));
    for (Element element : list.children("sheet")) {
      Sheet sheet = sheet(element, relationships);
      if (!names.add(sheet.name.toLowerCase(Locale.ROOT))) {
        throw new DamageException("two sheets are named \"" + sheet.name + "\"");
      }
      if (!parts.add(sheet.part.toLowerCase(Locale.ROOT))) {
        throw new DamageException("two sheets share the part " + sheet.part);
      }
      sheets.add(sheet);
    }
    if (sheets.isEmpty()) {
      throw new DamageException("it lists no sheets");
    }
    root().child("bookViews").ifPresent(WorkbookPart::requireNumbers);
  }

  /** They are needed when a sheet goes, and shall not be found wrong only then. */
  private static void requireNumbers(Element views) {
    for (Element view : views.children()) {
      view.number("activeTab", 0);
    }
  }

  private static Sheet sheet(Element element, Relationships relationships) {
    String name = element.get("name");
    String relation = relationId(element);
    Optional<Relationships.Target> target = relationships.byId(relation == null ? "" : relation);
    if (name == null || target.isEmpty()) {
      throw new DamageException("sheet \"" + name + "\" is listed but missing");
    }
    String state = element.get("state");
    Visibility visibility =
        "hidden".equals(state)
            ? Visibility.HIDDEN
            : "veryHidden".equals(state) ? Visibility.VERY_HIDDEN : Visibility.VISIBLE;
    boolean isTable = target.get().kind().equals("worksheet");
    return new Sheet(
        name, element.number("sheetId", 0), visibility, target.get().part(), isTable, element);
  }

  private static String relationId(Element sheet) {
    return sheet.attributes().stream()
        .filter(a -> a.name().equals("id") && a.namespace().endsWith("/relationships"))
        .map(Element.Attribute::value)
        .findFirst()
        .orElse(null);
  }

  public Markup markup() {
    return markup;
  }

  Element root() {
    return markup.root();
  }

  public List<Sheet> sheets() {
    return sheets;
  }

  public Optional<Sheet> sheet(String name) {
    return sheets.stream().filter(s -> s.name.equalsIgnoreCase(name)).findFirst();
  }

  public boolean isStrict() {
    return root().namespace().startsWith(STRICT);
  }

  /** Whether days are counted from 1904. */
  public boolean counts1904() {
    return root().child("workbookPr").map(p -> p.flag("date1904", false)).orElse(false);
  }

  /** Defined names, those of single sheets included. */
  public List<Element> definedNames() {
    return root().child("definedNames").map(n -> n.children("definedName")).orElse(List.of());
  }

  /** Defined names of the whole workbook. */
  public List<NamedCell> names() {
    return definedNames().stream()
        .filter(n -> n.get("localSheetId") == null && n.get("name") != null)
        .map(n -> new NamedCell(n.get("name"), n.text(), n.flag("hidden", false)))
        .toList();
  }
}
