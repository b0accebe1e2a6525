package fineweight.giveaway;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import javax.xml.namespace.QName;
import org.apache.xmlbeans.XmlCursor;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;

/** Where a chart stands on its sheet, number by number. */
final class Placing {
  private static final String PLACES =
      "declare namespace x='http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing'; ";

  private Placing() {}

  static String attribute(XmlObject element, String namespace, String name) {
    try (XmlCursor cursor = element.newCursor()) {
      String value = cursor.getAttributeText(new QName(namespace, name));
      return value == null ? "" : value;
    }
  }

  static byte[] bytes(XmlObject document) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    document.save(
        bytes,
        new XmlOptions()
            .setSaveAggressiveNamespaces()
            .setSaveSuggestedPrefixes(
                Map.of(
                    "http://schemas.openxmlformats.org/drawingml/2006/main",
                    "a",
                    "http://schemas.openxmlformats.org/drawingml/2006/chart",
                    "c",
                    NewPackage.RELATIONSHIPS,
                    "r")));
    return bytes.toByteArray();
  }

  /** A part whose root is in the default namespace, as every reader expects of it. */
  static byte[] plain(XmlObject document) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    document.save(bytes, EmptySheet.writing());
    return bytes.toByteArray();
  }

  static String position(XmlObject anchor, String kind) {
    return switch (kind) {
      case "twoCellAnchor" -> corner(anchor, "from") + corner(anchor, "to");
      case "oneCellAnchor" -> corner(anchor, "from") + pair(anchor, "ext", "cx", "cy");
      default -> pair(anchor, "pos", "x", "y") + pair(anchor, "ext", "cx", "cy");
    };
  }

  private static String corner(XmlObject anchor, String name) {
    StringBuilder corner = new StringBuilder("<xdr:" + name + ">");
    for (String part : List.of("col", "colOff", "row", "rowOff")) {
      String value = "0";
      XmlObject[] found = anchor.selectPath(PLACES + "./x:" + name + "/x:" + part);
      if (found.length > 0) {
        try (XmlCursor cursor = found[0].newCursor()) {
          value = number(cursor.getTextValue());
        }
      }
      corner.append("<xdr:%s>%s</xdr:%s>".formatted(part, value, part));
    }
    return corner.append("</xdr:" + name + ">").toString();
  }

  private static String pair(XmlObject anchor, String name, String first, String second) {
    XmlObject[] found = anchor.selectPath(PLACES + "./x:" + name);
    String one = found.length == 0 ? "0" : number(attribute(found[0], "", first));
    String two = found.length == 0 ? "0" : number(attribute(found[0], "", second));
    return "<xdr:%s %s=\"%s\" %s=\"%s\"/>".formatted(name, first, one, second, two);
  }

  private static String number(String text) {
    return text.matches("-?[0-9]{1,12}") ? text : "0";
  }
}
