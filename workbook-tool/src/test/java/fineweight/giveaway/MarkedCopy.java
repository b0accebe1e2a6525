package fineweight.giveaway;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/**
 * A workbook with a marker put by a walk over every text, every attribute and every part that is no
 * XML, whatever they mean.
 */
final class MarkedCopy {
  static final String MARKER = "Zq7Privatezq7";

  private final Map<String, byte[]> parts = new LinkedHashMap<>();

  MarkedCopy(Path file) throws IOException {
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
      for (ZipEntry each = zip.getNextEntry(); each != null; each = zip.getNextEntry()) {
        parts.put(each.getName(), zip.readAllBytes());
      }
    }
  }

  static boolean isXml(String part) {
    return part.matches("(?i).*\\.(xml|rels|vml)");
  }

  /** Every kind of place for a text: the name of an element, and of its attribute or nothing. */
  Set<String> kinds() throws IOException {
    Set<String> kinds = new TreeSet<>();
    for (String part : parts.keySet()) {
      if (isXml(part)) {
        walk(
            document(part).getDocumentElement(),
            part,
            (place, value) -> {
              kinds.add(place);
              return false;
            });
      }
    }
    return kinds;
  }

  /** Puts the marker into all places that are wanted, and into every part that is no XML. */
  void mark(BiPredicate<String, String> wanted) throws IOException {
    for (String part : List.copyOf(parts.keySet())) {
      if (isXml(part)) {
        Document document = document(part);
        if (document != null && walk(document.getDocumentElement(), part, wanted)) {
          parts.put(part, bytes(document));
        }
      } else {
        ByteArrayOutputStream longer = new ByteArrayOutputStream();
        longer.write(parts.get(part));
        longer.write(MARKER.getBytes(StandardCharsets.UTF_8));
        parts.put(part, longer.toByteArray());
      }
    }
  }

  /**
   * @param wanted is asked for each place with its kind and the value there
   */
  private static boolean walk(Element element, String part, BiPredicate<String, String> wanted) {
    String name = element.getLocalName();
    boolean changed = false;
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      Node attribute = element.getAttributes().item(i);
      boolean declares = attribute.getNodeName().startsWith("xmlns");
      String kind = kind(part) + ":" + name + "@" + attribute.getNodeName();
      if (!declares && wanted.test(kind, attribute.getNodeValue())) {
        attribute.setNodeValue(attribute.getNodeValue() + MARKER);
        changed = true;
      }
    }
    boolean children = false;
    for (Node each = element.getFirstChild(); each != null; each = each.getNextSibling()) {
      if (each instanceof Element child) {
        children = true;
        changed |= walk(child, part, wanted);
      }
    }
    String kind = kind(part) + ":" + name;
    if (!children && wanted.test(kind, element.getTextContent())) {
      element.setTextContent(element.getTextContent() + MARKER);
      changed = true;
    }
    return changed;
  }

  /** The part without the numbers that tell it from its like. */
  private static String kind(String part) {
    return part.substring(part.lastIndexOf('/') + 1).replaceAll("[0-9]+", "");
  }

  /** Null for a part that is malformed in the file itself. */
  private Document document(String part) throws IOException {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      return factory.newDocumentBuilder().parse(new ByteArrayInputStream(parts.get(part)));
    } catch (SAXException malformed) {
      return null;
    } catch (ParserConfigurationException impossible) {
      throw new IOException(part, impossible);
    }
  }

  private static byte[] bytes(Document document) throws IOException {
    try {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      TransformerFactory.newInstance()
          .newTransformer()
          .transform(new DOMSource(document), new StreamResult(bytes));
      return bytes.toByteArray();
    } catch (TransformerException unwritable) {
      throw new IOException(unwritable);
    }
  }

  Path write(Path file) throws IOException {
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      for (Map.Entry<String, byte[]> each : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(each.getKey()));
        zip.write(each.getValue());
        zip.closeEntry();
      }
    }
    return file;
  }

  /** Where the marker stands in a file, every entry inflated, with some text around it. */
  static List<String> found(Path file) throws IOException {
    List<String> found = new ArrayList<>();
    try (InputStream in = Files.newInputStream(file);
        ZipInputStream zip = new ZipInputStream(in)) {
      for (ZipEntry each = zip.getNextEntry(); each != null; each = zip.getNextEntry()) {
        String name = each.getName();
        String text = new String(zip.readAllBytes(), StandardCharsets.ISO_8859_1);
        if (name.contains(MARKER)) {
          found.add(name);
        }
        for (int at = text.indexOf(MARKER); at >= 0; at = text.indexOf(MARKER, at + 1)) {
          found.add(name + ": " + text.substring(Math.max(0, at - 80), at));
        }
        if (text.contains(utf16())) {
          found.add(name + " in UTF-16");
        }
      }
    }
    return found;
  }

  private static String utf16() {
    return new String(MARKER.getBytes(StandardCharsets.UTF_16LE), StandardCharsets.ISO_8859_1);
  }
}
