package fineweight.workbook.oracle.parts;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the parts of a workbook are for, found through the relationships and never by name. */
public final class PackageParts {
  private final RawZip zip;
  private final String workbookPart;
  private final Map<String, XmlElement> trees = new HashMap<>();
  private final List<Sheet> sheets = new ArrayList<>();

  /**
   * @param state {@code visible}, {@code hidden} or {@code veryHidden}
   * @param isTable false for a chart sheet or dialog
   */
  public record Sheet(String name, String id, String state, String part, boolean isTable) {}

  /**
   * @param type the last word of the relationship's type
   * @param target the part, or the address if external
   */
  public record Relation(String id, String type, String target, boolean external) {}

  public PackageParts(RawZip zip) throws IOException {
    this.zip = zip;
    this.workbookPart =
        relations("").stream()
            .filter(each -> each.type().equals("officeDocument"))
            .findFirst()
            .orElseThrow(() -> new IOException("no workbook part"))
            .target();
    Map<String, Relation> byId = new LinkedHashMap<>();
    relations(workbookPart).forEach(each -> byId.put(each.id(), each));
    for (XmlElement sheet :
        tree(workbookPart).child("sheets").map(each -> each.all("sheet")).orElse(List.of())) {
      Relation relation = byId.get(sheet.relation("id"));
      if (relation == null) {
        throw new IOException("sheet without relationship: " + sheet.get("name"));
      }
      String state = sheet.get("state");
      sheets.add(
          new Sheet(
              sheet.get("name"),
              sheet.get("sheetId"),
              state.isEmpty() ? "visible" : state,
              relation.target(),
              relation.type().equals("worksheet")));
    }
  }

  public String workbookPart() {
    return workbookPart;
  }

  public List<Sheet> sheets() {
    return sheets;
  }

  public RawZip zip() {
    return zip;
  }

  /** The part that the workbook refers to by this kind of relationship. */
  public Optional<String> related(String type) throws IOException {
    return relations(workbookPart).stream()
        .filter(each -> each.type().equals(type))
        .map(Relation::target)
        .findFirst();
  }

  public List<String> tables(Sheet sheet) throws IOException {
    return relations(sheet.part()).stream()
        .filter(each -> each.type().equals("table"))
        .map(Relation::target)
        .toList();
  }

  /** The names of the workbook part's {@code definedNames}. */
  public List<XmlElement> definedNames() throws IOException {
    return tree(workbookPart)
        .child("definedNames")
        .map(each -> each.all("definedName"))
        .orElse(List.of());
  }

  public XmlElement tree(String part) throws IOException {
    XmlElement known = trees.get(part);
    if (known == null) {
      RawZip.Entry entry = zip.entries().get(part);
      if (entry == null) {
        throw new IOException("no part " + part);
      }
      known = XmlElement.parse(entry.content());
      trees.put(part, known);
    }
    return known;
  }

  /** The relationships of a part; of the package if the part is the empty text. */
  public List<Relation> relations(String part) throws IOException {
    String relationsPart = relationsPart(part);
    if (!zip.entries().containsKey(relationsPart)) {
      return List.of();
    }
    List<Relation> found = new ArrayList<>();
    for (XmlElement each : tree(relationsPart).all("Relationship")) {
      String type = each.get("Type");
      boolean external = each.get("TargetMode").equals("External");
      String target = each.get("Target");
      found.add(
          new Relation(
              each.get("Id"),
              type.substring(type.lastIndexOf('/') + 1),
              external ? target : resolve(part, target),
              external));
    }
    return found;
  }

  public static String relationsPart(String part) {
    int slash = part.lastIndexOf('/') + 1;
    return part.substring(0, slash) + "_rels/" + part.substring(slash) + ".rels";
  }

  private static String resolve(String part, String target) {
    String folder = part.substring(0, part.lastIndexOf('/') + 1);
    String path = target.startsWith("/") ? target.substring(1) : folder + target;
    List<String> steps = new ArrayList<>();
    for (String step : path.split("/")) {
      if (step.equals("..") && !steps.isEmpty()) {
        steps.remove(steps.size() - 1);
      } else if (!step.equals(".") && !step.isEmpty()) {
        steps.add(step);
      }
    }
    return String.join("/", steps);
  }
}
