package fineweight.workbook.xlsx.part;

import fineweight.workbook.NamedCell;
import fineweight.workbook.PageSetup;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetSummary.Visibility;
import fineweight.workbook.xlsx.xml.ByteEdits;
import fineweight.workbook.xlsx.xml.Element;
import fineweight.workbook.xlsx.xml.StartTag;
import fineweight.workbook.xlsx.xml.XmlText;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Changes of the list of sheets and names, in the order that the schema wants. */
public final class WorkbookEdits {
  private static final List<String> BEFORE_NAMES =
      List.of("sheets", "functionGroups", "externalReferences");
  private static final String RELATIONSHIPS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  private final WorkbookPart workbook;
  private final ByteEdits edits;
  private final List<NamedCell> put = new ArrayList<>();
  private final Set<String> gone = new HashSet<>();
  private final Set<WorkbookPart.Sheet> goneSheets = new HashSet<>();
  private final StringBuilder newSheets = new StringBuilder();
  private final Set<String> changedNames = new HashSet<>();
  private final List<SheetDraft> added = new ArrayList<>();
  private int nextSheetId;

  public WorkbookEdits(WorkbookPart workbook) {
    this.workbook = workbook;
    edits = new ByteEdits(workbook.markup());
    nextSheetId = 1 + workbook.sheets().stream().mapToInt(WorkbookPart.Sheet::id).max().orElse(0);
  }

  public void putName(NamedCell name) {
    boolean there =
        workbook.names().stream()
            .anyMatch(
                n ->
                    n.name().equalsIgnoreCase(name.name())
                        && n.refersTo().equals(name.refersTo())
                        && n.hidden() == name.hidden());
    if (!there) {
      put.add(name);
      changedNames.add(key(name.name()));
    }
  }

  public void removeName(String name) {
    if (workbook.names().stream().anyMatch(n -> n.name().equalsIgnoreCase(name))) {
      gone.add(key(name));
      changedNames.add(key(name));
    }
  }

  /** In lower case. */
  public Set<String> changedNames() {
    return changedNames;
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  /**
   * @param relation the relationship's id
   */
  public void addSheet(SheetDraft draft, String relation) {
    Element list = workbook.root().child("sheets").orElseThrow();
    String prefix =
        workbook.sheets().get(0).element().attributes().stream()
            .filter(a -> a.name().equals("id") && a.namespace().equals(RELATIONSHIPS))
            .map(Element.Attribute::prefix)
            .findFirst()
            .orElse("r");
    newSheets.append(
        "<%s name=\"%s\" sheetId=\"%d\"%s%s %s:id=\"%s\"/>"
            .formatted(
                list.qualified("sheet"),
                XmlText.attribute(draft.name()),
                nextSheetId++,
                draft.hidden() ? " state=\"hidden\"" : "",
                declaration(prefix),
                prefix,
                relation));
    added.add(draft);
  }

  /** Some programs declare the prefix at each sheet and not at the root. */
  private String declaration(String prefix) {
    Element root = workbook.root();
    String tag = StartTag.text(workbook.markup().bytes(), root.start(), root.tagEnd());
    String name = "xmlns:" + prefix;
    return StartTag.get(tag, name) != null ? "" : " " + name + "=\"" + RELATIONSHIPS + "\"";
  }

  public void setHidden(WorkbookPart.Sheet sheet, boolean hidden) {
    edits.setAttribute(sheet.element(), "state", hidden ? "hidden" : null);
  }

  public void removeSheet(WorkbookPart.Sheet sheet) {
    goneSheets.add(sheet);
    edits.remove(sheet.element());
  }

  /** Whether names or sheets change. */
  public boolean changesAnything() {
    return !edits.isEmpty()
        || !put.isEmpty()
        || !gone.isEmpty()
        || !newSheets.isEmpty()
        || !goneSheets.isEmpty();
  }

  /**
   * The changed part.
   *
   * @param recalculate whether the office shall calculate everything when it opens the file
   */
  public byte[] changed(boolean recalculate) {
    Element sheets = workbook.root().child("sheets").orElseThrow();
    if (!newSheets.isEmpty()) {
      edits.append(sheets, newSheets.toString());
    }
    if (!goneSheets.isEmpty()) {
      views();
    }
    Element last = names();
    if (recalculate) {
      recalculate(last);
    }
    return edits.apply();
  }

  /** Returns the element behind which the calculation settings belong. */
  private Element names() {
    Element root = workbook.root();
    Element before =
        root.children().stream()
            .filter(e -> BEFORE_NAMES.contains(e.name()))
            .reduce((first, second) -> second)
            .orElseThrow();
    Element list = root.child("definedNames").orElse(null);
    StringBuilder names = new StringBuilder();
    put.forEach(n -> names.append(xml(n)));
    names.append(repeatedRows());
    if (list == null) {
      if (!names.isEmpty()) {
        String tag = root.qualified("definedNames");
        edits.insertAfter(before, "<" + tag + ">" + names + "</" + tag + ">");
      }
      return before;
    }
    List<Element> going = goingNames();
    if (names.isEmpty() && going.size() == list.children().size()) {
      edits.remove(list);
    } else {
      going.forEach(edits::remove);
      edits.append(list, names.toString());
      renumber(going);
    }
    return list;
  }

  /** The rows that new sheets begin every printed page with, as the names that offices know. */
  private String repeatedRows() {
    StringBuilder names = new StringBuilder();
    int index = workbook.sheets().size() - goneSheets.size();
    for (SheetDraft draft : added) {
      int rows = draft.page().map(PageSetup::repeatedRows).orElse(0);
      if (rows > 0) {
        String tag = workbook.root().qualified("definedName");
        String sheet = "'" + draft.name().replace("'", "''") + "'";
        names.append(
            "<%s name=\"_xlnm.Print_Titles\" localSheetId=\"%d\">%s!$1:$%d</%s>"
                .formatted(tag, index, XmlText.content(sheet), rows, tag));
      }
      index++;
    }
    return names.toString();
  }

  private List<Element> goingNames() {
    Set<String> names = new HashSet<>(gone);
    put.forEach(n -> names.add(key(n.name())));
    return workbook.definedNames().stream()
        .filter(
            n -> {
              String local = n.get("localSheetId");
              return local == null
                  ? names.contains(key(String.valueOf(n.get("name"))))
                  : shifted(n.number("localSheetId", 0)) < 0;
            })
        .toList();
  }

  /** Names of single sheets count the sheets; those behind a sheet that goes move up. */
  private void renumber(List<Element> going) {
    for (Element name : workbook.definedNames()) {
      int local = name.number("localSheetId", -1);
      if (local >= 0 && !going.contains(name)) {
        edits.setAttribute(name, "localSheetId", Integer.toString(shifted(local)));
      }
    }
  }

  /** The sheet's number after the removal; -1 if it goes itself. */
  private int shifted(int index) {
    int shift = 0;
    for (int i = 0; i <= index && i < workbook.sheets().size(); i++) {
      if (goneSheets.contains(workbook.sheets().get(i))) {
        if (i == index) {
          return -1;
        }
        shift++;
      }
    }
    return index - shift;
  }

  private String xml(NamedCell name) {
    String tag = workbook.root().qualified("definedName");
    return "<%s name=\"%s\"%s>%s</%s>"
        .formatted(
            tag,
            XmlText.attribute(name.name()),
            name.hidden() ? " hidden=\"1\"" : "",
            XmlText.content(name.refersTo()),
            tag);
  }

  private void views() {
    for (Element view :
        workbook.root().child("bookViews").map(Element::children).orElse(List.of())) {
      int active = view.number("activeTab", 0);
      int moved = shifted(active) < 0 ? firstVisible() : shifted(active);
      if (active != moved) {
        edits.setAttribute(view, "activeTab", Integer.toString(moved));
      }
    }
  }

  /** Counted without the sheets that go. */
  private int firstVisible() {
    for (int i = 0; i < workbook.sheets().size(); i++) {
      if (workbook.sheets().get(i).visibility() == Visibility.VISIBLE && shifted(i) >= 0) {
        return shifted(i);
      }
    }
    return 0;
  }

  private void recalculate(Element last) {
    Element root = workbook.root();
    root.child("calcPr")
        .ifPresentOrElse(
            c -> {
              if (!c.flag("fullCalcOnLoad", false)) {
                edits.setAttribute(c, "fullCalcOnLoad", "1");
              }
            },
            () ->
                edits.insertAfter(
                    last, "<" + root.qualified("calcPr") + " fullCalcOnLoad=\"1\"/>"));
  }
}
