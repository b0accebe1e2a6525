package fineweight.workbook.xlsx.xml;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import javax.xml.stream.XMLStreamConstants;

/**
 * A small part as a whole: its bytes and the tree over them.
 *
 * @param bytes UTF-8 without byte order mark
 */
public record Markup(String part, byte[] bytes, Element root) {
  public static Markup read(String part, InputStream raw) throws IOException {
    return of(part, PlainUtf8.of(raw).readAllBytes());
  }

  public static Markup of(String part, String text) {
    return of(part, text.getBytes(StandardCharsets.UTF_8));
  }

  public static Markup of(String part, byte[] utf8) {
    Element root = null;
    Deque<Element> open = new ArrayDeque<>();
    try (XmlCursor cursor = new XmlCursor(new ByteArrayInputStream(utf8), part)) {
      int event = cursor.next();
      for (; event != XMLStreamConstants.END_DOCUMENT; event = cursor.next()) {
        if (event == XMLStreamConstants.START_ELEMENT) {
          Element element = Element.opened(cursor);
          root = root == null ? element : root;
          if (!open.isEmpty()) {
            open.peek().children().add(element);
          }
          open.push(element);
        } else if (event == XMLStreamConstants.END_ELEMENT) {
          Element closed = open.pop();
          if (!closed.empty()) {
            closed.end().close(Math.toIntExact(cursor.start()), Math.toIntExact(cursor.end()));
          }
        } else if (!open.isEmpty()) {
          open.peek().addText(cursor.piece());
        }
      }
    }
    if (root == null) {
      throw new DamageException("part " + part + " is empty");
    }
    return new Markup(part, utf8, root);
  }

  /** Refuses another root element than the one that must stand here. */
  public Markup requireRoot(String name) {
    if (!root.name().equals(name)) {
      throw new DamageException("part " + part + " begins with " + root.name() + ", not " + name);
    }
    return this;
  }

  /** The bytes of an element, tags included. */
  public String source(Element element) {
    return new String(
        bytes, element.start(), element.after() - element.start(), StandardCharsets.UTF_8);
  }
}
