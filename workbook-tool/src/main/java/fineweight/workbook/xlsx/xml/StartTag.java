package fineweight.workbook.xlsx.xml;

import java.nio.charset.StandardCharsets;

/** Changes attributes in the text of one start tag that a parser has found to be well formed. */
public final class StartTag {
  private StartTag() {}

  /**
   * Where an attribute stands.
   *
   * @param start of the blank before its name
   * @param valueStart behind the opening quote
   * @param valueEnd before the closing quote
   */
  record Span(int start, int valueStart, int valueEnd) {}

  /** The tag with that attribute; an existing value is replaced. */
  public static String with(String tag, String attribute, String value) {
    Span span = find(tag, attribute);
    String escaped = XmlText.attribute(value);
    if (span != null) {
      return tag.substring(0, span.valueStart) + escaped + tag.substring(span.valueEnd);
    }
    int end = tag.endsWith("/>") ? tag.length() - 2 : tag.length() - 1;
    return tag.substring(0, end) + " " + attribute + "=\"" + escaped + "\"" + tag.substring(end);
  }

  /** The tag without that attribute. */
  public static String without(String tag, String attribute) {
    Span span = find(tag, attribute);
    return span == null ? tag : tag.substring(0, span.start) + tag.substring(span.valueEnd + 1);
  }

  /** The tag with an end tag of its own to follow. */
  public static String opened(String tag) {
    return tag.endsWith("/>") ? tag.substring(0, tag.length() - 2).stripTrailing() + ">" : tag;
  }

  /** The tag as its own end. */
  public static String closed(String tag) {
    return tag.endsWith("/>") ? tag : tag.substring(0, tag.length() - 1) + "/>";
  }

  /** The value as written, references not resolved; null if absent. */
  public static String get(String tag, String attribute) {
    Span span = find(tag, attribute);
    return span == null ? null : tag.substring(span.valueStart, span.valueEnd);
  }

  public static String text(byte[] bytes, int from, int to) {
    return new String(bytes, from, to - from, StandardCharsets.UTF_8);
  }

  private static Span find(String tag, String attribute) {
    int at = 1;
    while (at < tag.length() && !blank(tag.charAt(at)) && tag.charAt(at) != '>') {
      at++;
    }
    while (at < tag.length()) {
      int start = at;
      while (at < tag.length() && blank(tag.charAt(at))) {
        at++;
      }
      int equals = tag.indexOf('=', at);
      if (equals < 0) {
        return null;
      }
      String name = tag.substring(at, equals).strip();
      int quote = equals + 1;
      while (blank(tag.charAt(quote))) {
        quote++;
      }
      int close = tag.indexOf(tag.charAt(quote), quote + 1);
      if (name.equals(attribute)) {
        return new Span(start, quote + 1, close);
      }
      at = close + 1;
    }
    return null;
  }

  private static boolean blank(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
  }
}
