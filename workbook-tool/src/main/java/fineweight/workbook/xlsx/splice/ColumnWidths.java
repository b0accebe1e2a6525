package fineweight.workbook.xlsx.splice;

import fineweight.workbook.xlsx.part.CellRef;
import fineweight.workbook.xlsx.xml.StartTag;
import fineweight.workbook.xlsx.xml.XmlCursor;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The list of column widths and column formats of a sheet. A width that the owner gave stays as he
 * wrote it; ours stand between his, and only ours are ever taken out.
 */
final class ColumnWidths {
  /**
   * @param first from 0
   * @param last from 0, counted in
   * @param start where its tag begins in the part
   * @param tag as written
   */
  record Width(int first, int last, int style, long start, String tag) {
    static Width of(XmlCursor at, String tag) {
      int first = number(at.attribute("min"), 1) - 1;
      int last = number(at.attribute("max"), CellRef.COLUMNS) - 1;
      return new Width(first, last, number(at.attribute("style"), 0), at.start(), tag);
    }

    private static int number(String text, int otherwise) {
      return text != null && text.matches("\\d{1,5}") ? Integer.parseInt(text) : otherwise;
    }

    boolean covers(int column) {
      return column >= first && column <= last;
    }
  }

  private final List<Width> widths;

  ColumnWidths(List<Width> widths) {
    this.widths = List.copyOf(widths);
  }

  /** The format that the column gives to its cells; 0 for none. */
  int style(int column) {
    for (Width width : widths) {
      if (width.covers(column)) {
        return width.style;
      }
    }
    return 0;
  }

  /**
   * The list with widths of ours put in and taken out.
   *
   * @param whole the list as written, from its start tag to its end tag; empty if there is none
   * @param start where it begins in the part
   * @param prefix with colon, or empty
   */
  String changed(String whole, long start, Frame frame, String prefix) {
    Map<Integer, Double> open = new TreeMap<>(frame.widths());
    widths.forEach(w -> open.keySet().removeIf(w::covers));
    byte[] old = opened(whole, prefix).getBytes(StandardCharsets.UTF_8);
    int left = widths.size() + open.size();
    int copied = 0;
    StringBuilder xml = new StringBuilder();
    for (Width width : widths) {
      int place = (int) (width.start - start);
      xml.append(StartTag.text(old, copied, place));
      copied = place;
      write(open, width.first, prefix, xml);
      if (frame.gone().contains(width.first) && isOurs(width, prefix)) {
        copied += width.tag.getBytes(StandardCharsets.UTF_8).length;
        left--;
      }
    }
    int end = lastTag(old);
    xml.append(StartTag.text(old, copied, end));
    write(open, CellRef.COLUMNS, prefix, xml);
    return left == 0 ? "" : xml.append(StartTag.text(old, end, old.length)).toString();
  }

  private static String opened(String whole, String prefix) {
    if (whole.isEmpty()) {
      return "<%scols></%scols>".formatted(prefix, prefix);
    }
    return whole.contains("</") ? whole : StartTag.opened(whole) + "</" + prefix + "cols>";
  }

  private static int lastTag(byte[] xml) {
    int at = xml.length - 1;
    while (xml[at] != '<') {
      at--;
    }
    return at;
  }

  /** Writes and takes off the list those that stand before a column. */
  private static void write(
      Map<Integer, Double> open, int before, String prefix, StringBuilder xml) {
    open.forEach((column, size) -> xml.append(column < before ? own(column, size, prefix) : ""));
    open.keySet().removeIf(column -> column < before);
  }

  /** The order of the attributes is ours alone and tells our widths from the owner's. */
  private static String own(int column, Object size, String prefix) {
    return "<%scol min=\"%d\" max=\"%d\" customWidth=\"1\" hidden=\"0\" width=\"%s\"/>"
        .formatted(prefix, column + 1, column + 1, size);
  }

  private static boolean isOurs(Width width, String prefix) {
    String size = StartTag.get(width.tag, "width");
    return size != null && width.tag.equals(own(width.first, size, prefix));
  }
}
