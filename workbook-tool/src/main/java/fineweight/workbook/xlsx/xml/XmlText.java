package fineweight.workbook.xlsx.xml;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Text into XML and the office's own escapes both ways. */
public final class XmlText {
  private static final Pattern ESCAPE = Pattern.compile("_x([0-9A-Fa-f]{4})_");

  private static final Map<String, String> NAMED =
      Map.of("amp", "&", "lt", "<", "gt", ">", "quot", "\"", "apos", "'");

  private XmlText() {}

  /** Whether a cell may hold the text as it is: printable ASCII without marks of XML or escapes. */
  public static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c > '~' || c == '&' || c == '<' || c == '>' || c == '_') {
        return false;
      }
    }
    return true;
  }

  /** For element content. Carriage returns stay apart from line feeds. */
  public static String content(String text) {
    StringBuilder out = null;
    for (int i = 0; i < text.length(); i++) {
      String instead = contentReference(text.charAt(i));
      if (instead != null && out == null) {
        out = new StringBuilder(text.length() + 16).append(text, 0, i);
      }
      if (out != null) {
        if (instead == null) {
          out.append(text.charAt(i));
        } else {
          out.append(instead);
        }
      }
    }
    return out == null ? text : out.toString();
  }

  private static String contentReference(char c) {
    return switch (c) {
      case '&' -> "&amp;";
      case '<' -> "&lt;";
      case '>' -> "&gt;";
      case '\r' -> "&#13;";
      default -> null;
    };
  }

  /**
   * The text that was meant by one with references to the five signs that XML names.
   *
   * @return null if it refers to anything else
   */
  public static String withoutReferences(String xml) {
    StringBuilder out = new StringBuilder(xml.length());
    int from = 0;
    for (int at = xml.indexOf('&'); at >= 0; at = xml.indexOf('&', from)) {
      int end = xml.indexOf(';', at);
      String sign = end < 0 ? null : NAMED.get(xml.substring(at + 1, end));
      if (sign == null) {
        return null;
      }
      out.append(xml, from, at).append(sign);
      from = end + 1;
    }
    return out.append(xml, from, xml.length()).toString();
  }

  /** For a value between double quotes. */
  public static String attribute(String text) {
    return content(text).replace("\"", "&quot;").replace("\n", "&#10;").replace("\t", "&#9;");
  }

  /** Cell text with what XML forbids as {@code _xHHHH_}, not yet escaped for XML. */
  public static String escapeCell(String text) {
    String safe = text;
    if (text.contains("_x")) {
      safe = ESCAPE.matcher(text).replaceAll("_x005F_x$1_");
    }
    StringBuilder out = null;
    for (int i = 0; i < safe.length(); i++) {
      char c = safe.charAt(i);
      boolean forbidden = forbidden(safe, i);
      if (forbidden && out == null) {
        out = new StringBuilder(safe.length() + 16).append(safe, 0, i);
      }
      if (out != null) {
        out.append(forbidden ? String.format("_x%04X_", (int) c) : String.valueOf(c));
      }
    }
    return out == null ? safe : out.toString();
  }

  private static boolean forbidden(String text, int i) {
    char c = text.charAt(i);
    if (Character.isHighSurrogate(c)) {
      return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
    }
    if (Character.isLowSurrogate(c)) {
      return i == 0 || !Character.isHighSurrogate(text.charAt(i - 1));
    }
    return c < ' ' && c != '\t' && c != '\n' || c == '\uFFFE' || c == '\uFFFF';
  }

  /** Cell text with the office's escapes resolved. */
  public static String unescapeCell(String text) {
    if (!text.contains("_x")) {
      return text;
    }
    Matcher matcher = ESCAPE.matcher(text);
    StringBuilder out = new StringBuilder();
    while (matcher.find()) {
      char c = (char) Integer.parseInt(matcher.group(1), 16);
      matcher.appendReplacement(out, Matcher.quoteReplacement(String.valueOf(c)));
    }
    return matcher.appendTail(out).toString();
  }
}
