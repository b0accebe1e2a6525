package fineweight.giveaway;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.xml.namespace.QName;
import org.apache.xmlbeans.SchemaLocalAttribute;
import org.apache.xmlbeans.SchemaType;
import org.apache.xmlbeans.XmlCursor;
import org.apache.xmlbeans.XmlObject;

/**
 * Lets through what the standard's schema knows and holds to a number, a yes or no, a colour or one
 * of a fixed list of words. Elements that the schema does not know go; a free text stays only if
 * its rule says so.
 */
final class SchemaSieve {
  /** What becomes of a text that the schema leaves free. */
  @FunctionalInterface
  interface FreeText {
    /**
     * @param element local name
     * @param attribute local name; empty for the text of the element itself
     * @return what to write instead; null to leave it out
     */
    String of(String element, String attribute, String value);
  }

  private final Set<String> gone;
  private final Set<String> hollow;
  private final FreeText rule;

  /**
   * @param gone elements that go with all they hold
   * @param hollow elements that go if nothing is left in them
   */
  SchemaSieve(Set<String> gone, Set<String> hollow, FreeText rule) {
    this.gone = gone;
    this.hollow = hollow;
    this.rule = rule;
  }

  /** Changes the document in place. */
  void sieve(XmlObject document) {
    try (XmlCursor cursor = document.newCursor()) {
      if (cursor.toFirstChild()) {
        element(cursor);
      }
    }
  }

  private void element(XmlCursor at) {
    SchemaType type = at.getObject().schemaType();
    String name = at.getName().getLocalPart();
    attributes(at, type, name);
    boolean simple = type.isSimpleType() || type.getContentType() == SchemaType.SIMPLE_CONTENT;
    if (simple) {
      text(at, type, name);
    } else {
      children(at);
    }
  }

  private void attributes(XmlCursor at, SchemaType type, String element) {
    List<QName> names = new ArrayList<>();
    try (XmlCursor attribute = at.newCursor()) {
      for (boolean more = attribute.toFirstAttribute(); more; more = attribute.toNextAttribute()) {
        names.add(attribute.getName());
      }
    }
    for (QName name : names) {
      SchemaLocalAttribute known =
          type.isSimpleType() ? null : type.getAttributeModel().getAttribute(name);
      String value = at.getAttributeText(name);
      String kept = known == null ? null : value;
      if (known != null && !Closed.holds(known.getType(), value)) {
        kept = rule.of(element, name.getLocalPart(), value);
      }
      if (kept == null) {
        at.removeAttribute(name);
      } else if (!kept.equals(value)) {
        at.setAttributeText(name, kept);
      }
    }
  }

  private void text(XmlCursor at, SchemaType type, String element) {
    String value = at.getTextValue();
    if (Closed.holds(type, value)) {
      return;
    }
    String kept = rule.of(element, "", value);
    if (!value.equals(kept)) {
      at.setTextValue(kept == null ? "" : kept);
    }
  }

  private void children(XmlCursor parent) {
    removeTexts(parent);
    try (XmlCursor at = parent.newCursor()) {
      boolean more = at.toFirstChild();
      while (more) {
        if (stays(at)) {
          more = at.toNextSibling();
        } else {
          // The cursor then stands before whatever followed.
          at.removeXml();
          more = at.isStart() || at.toNextSibling();
        }
      }
    }
  }

  private boolean stays(XmlCursor at) {
    String name = at.getName().getLocalPart();
    if (gone.contains(name) || at.getObject().schemaType().isNoType()) {
      return false;
    }
    element(at);
    return !(hollow.contains(name) && isEmpty(at));
  }

  private static boolean isEmpty(XmlCursor at) {
    try (XmlCursor inside = at.newCursor()) {
      return !inside.toFirstChild() && at.getTextValue().isEmpty();
    }
  }

  /** Loose text between elements belongs to nobody. */
  private static void removeTexts(XmlCursor parent) {
    try (XmlCursor at = parent.newCursor()) {
      int depth = 0;
      XmlCursor.TokenType token = at.toNextToken();
      while (depth >= 0) {
        if (token.isText() && depth == 0) {
          at.removeChars(-1);
          token = at.currentTokenType();
          continue;
        }
        depth += token.isStart() ? 1 : token.isEnd() ? -1 : 0;
        token = depth < 0 ? token : at.toNextToken();
      }
    }
  }
}
