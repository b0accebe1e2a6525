package fineweight.workbook.xlsx.splice;

import fineweight.workbook.xlsx.part.CellRef;
import fineweight.workbook.xlsx.xml.StartTag;
import fineweight.workbook.xlsx.xml.XmlCursor;
import java.util.ArrayList;
import java.util.List;

/** The list of column widths and column formats of a sheet. */
final class ColumnWidths {
  /**
   * @param first from 0
   * @param last from 0, counted in
   * @param tag as written
   */
  record Width(int first, int last, int style, String tag) {
    static Width of(XmlCursor at, String tag) {
      int first = number(at.attribute("min"), 1) - 1;
      int last = number(at.attribute("max"), CellRef.COLUMNS) - 1;
      return new Width(first, last, number(at.attribute("style"), 0), tag);
    }

    private static int number(String text, int otherwise) {
      return text != null && text.matches("\\d{1,5}") ? Integer.parseInt(text) : otherwise;
    }

    Width between(int from, int to) {
      String cut = StartTag.with(tag, "min", Integer.toString(from + 1));
      return new Width(from, to, style, StartTag.with(cut, "max", Integer.toString(to + 1)));
    }

    boolean sameBut(Width other) {
      return between(0, 0).tag.equals(other.between(0, 0).tag);
    }
  }

  private final List<Width> widths;

  ColumnWidths(List<Width> widths) {
    this.widths = new ArrayList<>(widths);
  }

  /** The format that the column gives to its cells; 0 for none. */
  int style(int column) {
    for (Width width : widths) {
      if (column >= width.first && column <= width.last) {
        return width.style;
      }
    }
    return 0;
  }

  /**
   * @param size in characters
   * @param prefix with colon, or empty
   */
  void set(int column, double size, String prefix) {
    List<Width> result = new ArrayList<>();
    String fresh =
        "<%scol min=\"%d\" max=\"%d\" width=\"%s\" customWidth=\"1\"/>"
            .formatted(prefix, column + 1, column + 1, size);
    Width own = new Width(column, column, 0, fresh);
    boolean placed = false;
    for (Width width : widths) {
      if (!placed && width.first > column) {
        result.add(own);
        placed = true;
      }
      if (column < width.first || column > width.last) {
        result.add(width);
        continue;
      }
      if (width.first < column) {
        result.add(width.between(width.first, column - 1));
      }
      String sized = StartTag.with(width.between(column, column).tag, "width", "" + size);
      result.add(new Width(column, column, width.style, StartTag.with(sized, "customWidth", "1")));
      placed = true;
      if (width.last > column) {
        result.add(width.between(column + 1, width.last));
      }
    }
    if (!placed) {
      result.add(own);
    }
    replace(result);
  }

  /** Takes a column's own width out; equal widths on both sides grow together again. */
  void remove(int column) {
    List<Width> result = new ArrayList<>();
    for (Width width : widths) {
      if (width.first == column && width.last == column) {
        continue;
      }
      Width before = result.isEmpty() ? null : result.get(result.size() - 1);
      boolean joins =
          before != null
              && before.last == column - 1
              && width.first == column + 1
              && before.sameBut(width);
      if (joins) {
        result.set(result.size() - 1, before.between(before.first, width.last));
      } else {
        result.add(width);
      }
    }
    replace(result);
  }

  private void replace(List<Width> result) {
    widths.clear();
    widths.addAll(result);
  }

  /**
   * @param prefix with colon, or empty
   */
  String xml(String prefix) {
    StringBuilder xml = new StringBuilder();
    widths.forEach(w -> xml.append(StartTag.closed(w.tag)));
    return widths.isEmpty() ? "" : "<%scols>%s</%scols>".formatted(prefix, xml, prefix);
  }
}
