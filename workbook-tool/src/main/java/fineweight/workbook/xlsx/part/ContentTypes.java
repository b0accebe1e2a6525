package fineweight.workbook.xlsx.part;

import fineweight.workbook.xlsx.xml.ByteEdits;
import fineweight.workbook.xlsx.xml.Element;
import fineweight.workbook.xlsx.xml.Markup;
import fineweight.workbook.xlsx.xml.XmlText;
import java.util.Locale;

/** What kind of content each part has. */
public final class ContentTypes {
  public static final String PART = "[Content_Types].xml";
  public static final String WORKSHEET =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";
  public static final String STYLES =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml";
  public static final String DRAWING = "application/vnd.openxmlformats-officedocument.drawing+xml";
  public static final String RELATIONSHIPS =
      "application/vnd.openxmlformats-package.relationships+xml";
  public static final String CHART =
      "application/vnd.openxmlformats-officedocument.drawingml.chart+xml";

  private final Markup markup;
  private final ByteEdits edits;

  public ContentTypes(Markup markup) {
    this.markup = markup.requireRoot("Types");
    edits = new ByteEdits(markup);
  }

  /**
   * @param part without leading slash
   * @return empty if unknown
   */
  public String of(String part) {
    Element override = override(part);
    if (override != null) {
      return text(override.get("ContentType"));
    }
    String extension = part.substring(part.lastIndexOf('.') + 1);
    for (Element each : markup.root().children("Default")) {
      if (extension.equalsIgnoreCase(each.get("Extension"))) {
        return text(each.get("ContentType"));
      }
    }
    return "";
  }

  private static String text(String value) {
    return value == null ? "" : value;
  }

  private Element override(String part) {
    String name = "/" + part.toLowerCase(Locale.ROOT);
    for (Element each : markup.root().children("Override")) {
      if (name.equalsIgnoreCase(each.get("PartName"))) {
        return each;
      }
    }
    return null;
  }

  /** An entry may be there although its part is not. */
  public void add(String part, String type) {
    Element there = override(part);
    if (there != null) {
      edits.setAttribute(there, "ContentType", type);
      return;
    }
    String tag = markup.root().qualified("Override");
    edits.append(
        markup.root(),
        "<%s PartName=\"/%s\" ContentType=\"%s\"/>".formatted(tag, XmlText.attribute(part), type));
  }

  public void remove(String part) {
    Element override = override(part);
    if (override != null) {
      edits.remove(override);
    }
  }

  /** The changed part; null if nothing changed. */
  public byte[] changed() {
    return edits.isEmpty() ? null : edits.apply();
  }
}
