package fineweight.workbook.xlsx.part;

import fineweight.workbook.xlsx.xml.ByteEdits;
import fineweight.workbook.xlsx.xml.Element;
import fineweight.workbook.xlsx.xml.Markup;
import fineweight.workbook.xlsx.xml.XmlText;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What one part points to. Targets outside of the package are never followed. */
public final class Relationships {
  private static final String BASE =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships/";

  private final String source;
  private final Markup markup;
  private final ByteEdits edits;
  private final List<Target> targets = new ArrayList<>();
  private final Set<String> ids = new HashSet<>();

  /**
   * @param kind the last word of its type, such as {@code worksheet}
   * @param part without leading slash
   */
  public record Target(String id, String kind, String part, Element element) {}

  /**
   * @param source the part they belong to; empty for the package itself
   */
  public Relationships(String source, Markup markup) {
    this.source = source;
    this.markup = markup.requireRoot("Relationships");
    edits = new ByteEdits(markup);
    for (Element each : markup.root().children("Relationship")) {
      String id = text(each.get("Id"));
      ids.add(id);
      if (!"External".equals(each.get("TargetMode"))) {
        String type = text(each.get("Type"));
        String kind = type.substring(type.lastIndexOf('/') + 1);
        targets.add(new Target(id, kind, resolve(text(each.get("Target"))), each));
      }
    }
  }

  /** Where the relationships of a part stand. */
  public static String partOf(String source) {
    int slash = source.lastIndexOf('/') + 1;
    return source.substring(0, slash) + "_rels/" + source.substring(slash) + ".rels";
  }

  private static String text(String value) {
    return value == null ? "" : value;
  }

  private String resolve(String target) {
    String base = target.startsWith("/") ? "" : source.substring(0, source.lastIndexOf('/') + 1);
    Deque<String> steps = new ArrayDeque<>();
    for (String step : (base + decoded(target)).split("/")) {
      if (step.equals("..")) {
        steps.pollLast();
      } else if (!step.isEmpty() && !step.equals(".")) {
        steps.addLast(step);
      }
    }
    return String.join("/", steps);
  }

  private static String decoded(String target) {
    if (!target.contains("%")) {
      return target;
    }
    try {
      return URLDecoder.decode(target.replace("+", "%2B"), StandardCharsets.UTF_8);
    } catch (IllegalArgumentException e) {
      return target;
    }
  }

  public Optional<Target> byId(String id) {
    return targets.stream().filter(t -> t.id().equals(id)).findFirst();
  }

  public Optional<Target> byKind(String kind) {
    return targets.stream().filter(t -> t.kind().equals(kind)).findFirst();
  }

  public List<Target> allOfKind(String kind) {
    return targets.stream().filter(t -> t.kind().equals(kind)).toList();
  }

  /** Those of a part that has none yet. */
  public static Relationships none(String source) {
    return new Relationships(
        source,
        Markup.of(
            partOf(source),
            "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n<Relationships"
                + " xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                + "</Relationships>"));
  }

  /** Adds one and gives its id. The target is written from the package's root. */
  public String add(String kind, String part) {
    String id = freeId();
    add(id, kind, part);
    return id;
  }

  /** An id that is not used yet. */
  public String freeId() {
    int number = ids.size() + 1;
    while (ids.contains("rId" + number)) {
      number++;
    }
    return "rId" + number;
  }

  /** Adds one under an id that is free. */
  public void add(String id, String kind, String part) {
    ids.add(id);
    String tag = markup.root().qualified("Relationship");
    edits.append(
        markup.root(),
        "<%s Id=\"%s\" Type=\"%s\" Target=\"/%s\"/>"
            .formatted(tag, id, BASE + kind, XmlText.attribute(part)));
  }

  /** All that stay inside the package. */
  public List<Target> all() {
    return List.copyOf(targets);
  }

  public void remove(Target target) {
    edits.remove(target.element());
  }

  /** The changed part; null if nothing changed. */
  public byte[] changed() {
    return edits.isEmpty() ? null : edits.apply();
  }

  public String part() {
    return markup.part();
  }
}
