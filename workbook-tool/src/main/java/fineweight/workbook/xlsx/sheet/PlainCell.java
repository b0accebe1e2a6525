package fineweight.workbook.xlsx.sheet;

import fineweight.workbook.xlsx.xml.XmlText;
import java.nio.charset.StandardCharsets;

/**
 * Reads what stands in a cell in the few forms that programs write, from bytes that the parser has
 * passed before. Whatever looks otherwise is left to the parser.
 */
final class PlainCell {
  private static final byte[] CELL_END = ascii("</c>");
  private static final byte[] VALUE = ascii("<v>");
  private static final byte[] VALUE_END = ascii("</v>");
  private static final byte[] FORMULA = ascii("<f");
  private static final byte[] FORMULA_END = ascii("</f>");
  private static final byte[] INLINE = ascii("<is><t>");
  private static final byte[] INLINE_KEPT = ascii("<is><t xml:space=\"preserve\">");
  private static final byte[] INLINE_END = ascii("</t></is>");

  private byte[] bytes;
  private int at;
  private int end;
  private String text;

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  /**
   * Fills the cell with what stands between its start tag and its end.
   *
   * @param from behind the start tag
   * @param to behind the end tag
   * @return false if the parser has to read it; the cell is half filled then
   */
  boolean read(CellXml cell, byte[] content, int from, int to) {
    bytes = content;
    at = from;
    end = to;
    while (!isAt(CELL_END)) {
      if (!child(cell)) {
        return false;
      }
    }
    return at + CELL_END.length == end;
  }

  private boolean child(CellXml cell) {
    if (takes(VALUE)) {
      if (!text(VALUE_END)) {
        return false;
      }
      cell.setValue(text);
      return true;
    }
    if (takes(FORMULA)) {
      return formula(cell);
    }
    if ((takes(INLINE) || takes(INLINE_KEPT)) && text(INLINE_END)) {
      cell.inline = XmlText.unescapeCell(text);
      return true;
    }
    return false;
  }

  private boolean formula(CellXml cell) {
    cell.formula = true;
    while (at < end && bytes[at] == ' ') {
      at++;
      if (!attribute(cell)) {
        return false;
      }
    }
    if (at + 1 < end && bytes[at] == '/' && bytes[at + 1] == '>') {
      at += 2;
      return true;
    }
    if (at == end || bytes[at] != '>') {
      return false;
    }
    at++;
    if (!text(FORMULA_END)) {
      return false;
    }
    cell.formulaText = text;
    return true;
  }

  private boolean attribute(CellXml cell) {
    int name = at;
    while (at < end && (bytes[at] >= 'a' && bytes[at] <= 'z' || bytes[at] == '1')) {
      at++;
    }
    int nameEnd = at;
    if (at + 1 >= end || bytes[at] != '=' || bytes[at + 1] != '"') {
      return false;
    }
    at += 2;
    int value = at;
    while (at < end && bytes[at] != '"') {
      if (bytes[at] == '&' || bytes[at] <= ' ') {
        return false;
      }
      at++;
    }
    if (at == end) {
      return false;
    }
    String text = latin(value, at);
    at++;
    return put(cell, latin(name, nameEnd), text);
  }

  private String latin(int from, int to) {
    return new String(bytes, from, to - from, StandardCharsets.US_ASCII);
  }

  private static boolean put(CellXml cell, String name, String value) {
    if (!name.equals("si")) {
      cell.formulaAttribute(name, value);
      return true;
    }
    boolean number = !value.isEmpty() && value.length() < 9;
    number &= value.chars().allMatch(c -> c >= '0' && c <= '9');
    if (number) {
      cell.shared = Integer.parseInt(value);
    }
    return number;
  }

  private boolean isAt(byte[] words) {
    if (at + words.length > end) {
      return false;
    }
    for (int i = 0; i < words.length; i++) {
      if (bytes[at + i] != words[i]) {
        return false;
      }
    }
    return true;
  }

  private boolean takes(byte[] words) {
    boolean there = isAt(words);
    at += there ? words.length : 0;
    return there;
  }

  /** Takes the text up to that tag. Line ends of another system are the parser's business. */
  private boolean text(byte[] tag) {
    int start = at;
    boolean references = false;
    while (at < end && bytes[at] != '<') {
      if (bytes[at] == '\r') {
        return false;
      }
      references |= bytes[at] == '&';
      at++;
    }
    text = new String(bytes, start, at - start, StandardCharsets.UTF_8);
    if (references) {
      text = XmlText.withoutReferences(text);
    }
    return text != null && takes(tag);
  }
}
