package fineweight.workbook.xlsx.xml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An element of a small part, with the places of its tags in the part's bytes.
 *
 * @param start of the start tag
 * @param tagEnd behind the start tag
 * @param empty whether the start tag is its own end
 * @param children filled while reading
 * @param end where the end tag stands and where it ends, and the text
 */
public record Element(
    String prefix,
    String name,
    String namespace,
    List<Attribute> attributes,
    int start,
    int tagEnd,
    boolean empty,
    List<Element> children,
    End end) {

  /**
   * @param prefix empty for none
   */
  public record Attribute(String prefix, String namespace, String name, String value) {}

  /** The end of an element, known only after its children. */
  public static final class End {
    private int contentEnd;
    private int after;
    private final StringBuilder text = new StringBuilder();

    void close(int contentEnd, int after) {
      this.contentEnd = contentEnd;
      this.after = after;
    }
  }

  static Element opened(XmlCursor cursor) {
    List<Attribute> attributes = new ArrayList<>();
    var reader = cursor.attributes();
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String namespace = reader.getAttributeNamespace(i);
      attributes.add(
          new Attribute(
              reader.getAttributePrefix(i),
              namespace == null ? "" : namespace,
              reader.getAttributeLocalName(i),
              reader.getAttributeValue(i)));
    }
    return new Element(
        cursor.prefix(),
        cursor.name(),
        cursor.namespace(),
        attributes,
        Math.toIntExact(cursor.start()),
        Math.toIntExact(cursor.end()),
        cursor.isEmptyElement(),
        new ArrayList<>(),
        new End());
  }

  void addText(String piece) {
    end.text.append(piece);
  }

  /** Where the end tag begins. */
  public int contentEnd() {
    return empty ? tagEnd : end.contentEnd;
  }

  /** Behind the whole element. */
  public int after() {
    return empty ? tagEnd : end.after;
  }

  /** The text that stands directly in it. */
  public String text() {
    return end.text.toString();
  }

  /** An attribute without namespace; null if absent. */
  public String get(String attribute) {
    return get("", attribute);
  }

  public int number(String attribute, int otherwise) {
    String value = get(attribute);
    try {
      return value == null ? otherwise : Integer.parseInt(value.trim());
    } catch (NumberFormatException e) {
      throw new DamageException(
          "attribute " + attribute + " of " + name + " is not a number: " + value, e);
    }
  }

  public boolean flag(String attribute, boolean otherwise) {
    String value = get(attribute);
    return value == null ? otherwise : value.equals("1") || value.equals("true");
  }

  /** An attribute of that namespace; null if absent. */
  public String get(String namespace, String attribute) {
    for (Attribute each : attributes) {
      if (each.name().equals(attribute) && each.namespace().equals(namespace)) {
        return each.value();
      }
    }
    return null;
  }

  /** The first child of that name in this element's own namespace. */
  public Optional<Element> child(String childName) {
    return children(childName).stream().findFirst();
  }

  public List<Element> children(String childName) {
    return children.stream()
        .filter(c -> c.name().equals(childName) && c.namespace().equals(namespace))
        .toList();
  }

  /** The name as written, with its prefix. */
  public String tag() {
    return qualified(name);
  }

  /** Another name with this element's prefix. */
  public String qualified(String otherName) {
    return prefix.isEmpty() ? otherName : prefix + ":" + otherName;
  }
}
