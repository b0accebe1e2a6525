package fineweight.workbook.oracle.parts;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * An element of a part, read with the parser of the JDK. White space between elements is dropped,
 * all else is kept: comments as elements named {@code #comment}, declared namespaces as attributes
 * (the list of ignorable prefixes hangs on them).
 *
 * @param name without prefix
 * @param attributes by local name; one with a namespace is written {@code {namespace}name}
 * @param text the characters directly inside, joined; empty if there are only blanks between
 *     children
 */
public record XmlElement(
    String namespace,
    String name,
    Map<String, String> attributes,
    String text,
    List<XmlElement> children) {

  public static XmlElement parse(byte[] part) throws IOException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    try {
      return read(factory.createXMLStreamReader(new ByteArrayInputStream(part)));
    } catch (XMLStreamException e) {
      throw new IOException("not well-formed: " + e.getMessage(), e);
    }
  }

  /** The first child of that name. */
  public Optional<XmlElement> child(String wanted) {
    return children.stream().filter(each -> each.name.equals(wanted)).findFirst();
  }

  /** All children of that name. */
  public List<XmlElement> all(String wanted) {
    return children.stream().filter(each -> each.name.equals(wanted)).toList();
  }

  /** The attribute's value, empty text if it is missing. */
  public String get(String attribute) {
    return attributes.getOrDefault(attribute, "");
  }

  /** An attribute that stands in the relationships namespace of either dialect. */
  public String relation(String attribute) {
    return attributes.entrySet().stream()
        .filter(each -> each.getKey().endsWith("/relationships}" + attribute))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("");
  }

  /** All text below, in order. */
  public String allText() {
    StringBuilder all = new StringBuilder(text);
    children.forEach(each -> all.append(each.allText()));
    return all.toString();
  }

  /** The same element with other attributes and children. */
  public XmlElement with(Map<String, String> otherAttributes, List<XmlElement> otherChildren) {
    return new XmlElement(namespace, name, otherAttributes, text, otherChildren);
  }

  private static XmlElement read(XMLStreamReader reader) throws XMLStreamException {
    Deque<Draft> open = new ArrayDeque<>();
    open.push(new Draft(new XmlElement("", "#part", Map.of(), "", new ArrayList<>())));
    while (reader.hasNext()) {
      switch (reader.next()) {
        case XMLStreamConstants.START_ELEMENT -> open.push(new Draft(start(reader)));
        case XMLStreamConstants.END_ELEMENT -> {
          XmlElement done = open.pop().finished();
          open.element().element.children.add(done);
        }
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE ->
            open.element().text.append(reader.getText());
        case XMLStreamConstants.COMMENT ->
            open.element().element.children.add(aside("#comment", reader.getText()));
        case XMLStreamConstants.PROCESSING_INSTRUCTION ->
            open.element()
                .element
                .children
                .add(aside("#instruction", reader.getPITarget() + " " + reader.getPIData()));
        case XMLStreamConstants.DTD -> throw new XMLStreamException("a DOCTYPE");
        default -> {}
      }
    }
    return open.pop().element.children.stream()
        .filter(each -> !each.name.startsWith("#"))
        .findFirst()
        .orElseThrow(() -> new XMLStreamException("no element"));
  }

  private static XmlElement aside(String name, String text) {
    return new XmlElement("", name, Map.of(), text, List.of());
  }

  private static XmlElement start(XMLStreamReader reader) {
    Map<String, String> attributes = new TreeMap<>();
    for (int i = 0; i < reader.getNamespaceCount(); i++) {
      attributes.put("xmlns:" + reader.getNamespacePrefix(i), reader.getNamespaceURI(i));
    }
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String space = reader.getAttributeNamespace(i);
      String name = reader.getAttributeLocalName(i);
      attributes.put(
          space == null || space.isEmpty() ? name : "{" + space + "}" + name,
          reader.getAttributeValue(i));
    }
    return new XmlElement(
        reader.getNamespaceURI(), reader.getLocalName(), attributes, "", new ArrayList<>());
  }

  private static final class Draft {
    final XmlElement element;
    final StringBuilder text = new StringBuilder();

    Draft(XmlElement element) {
      this.element = element;
    }

    XmlElement finished() {
      boolean layout = !element.children.isEmpty() && text.toString().isBlank();
      return new XmlElement(
          element.namespace,
          element.name,
          element.attributes,
          layout ? "" : text.toString(),
          element.children);
    }
  }
}
