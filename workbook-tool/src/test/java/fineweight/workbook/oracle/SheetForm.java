package fineweight.workbook.oracle;

import fineweight.workbook.CellPlace;
import fineweight.workbook.oracle.parts.Places;
import fineweight.workbook.oracle.parts.XmlElement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * A worksheet in one form, so that two spellings of the same thing compare as equal: cells and rows
 * carry their reference, the default style and type are left out, cells and rows without any
 * content or look are left out, column widths are cut at our columns and nowhere else.
 */
final class SheetForm {
  private SheetForm() {}

  static XmlElement of(XmlElement worksheet, Set<Integer> ownColumns) {
    List<XmlElement> children = new ArrayList<>();
    for (XmlElement child : worksheet.children()) {
      switch (child.name()) {
        case "sheetData" -> children.add(data(child));
        case "cols" -> {
          List<XmlElement> columns = columns(child, ownColumns);
          if (!columns.isEmpty()) {
            children.add(child.with(child.attributes(), columns));
          }
        }
        default -> children.add(child);
      }
    }
    return worksheet.with(worksheet.attributes(), children);
  }

  /** Blanks between rows are no text, even where there is no row left. */
  private static XmlElement data(XmlElement data) {
    String text = data.text().isBlank() ? "" : data.text();
    return new XmlElement(data.namespace(), data.name(), data.attributes(), text, rows(data));
  }

  private static List<XmlElement> rows(XmlElement data) {
    List<XmlElement> rows = new ArrayList<>();
    int next = 1;
    for (XmlElement child : data.children()) {
      if (!child.name().equals("row")) {
        rows.add(child);
        continue;
      }
      int number = child.get("r").isEmpty() ? next : Integer.parseInt(child.get("r").strip());
      next = number + 1;
      Map<String, String> attributes = new TreeMap<>(child.attributes());
      attributes.put("r", String.valueOf(number));
      List<XmlElement> cells = cells(child, number);
      boolean bare = attributes.keySet().stream().allMatch(Set.of("r", "spans")::contains);
      if (!bare || !cells.isEmpty()) {
        rows.add(child.with(attributes, cells));
      }
    }
    return rows;
  }

  private static List<XmlElement> cells(XmlElement row, int number) {
    List<XmlElement> cells = new ArrayList<>();
    int next = 0;
    for (XmlElement child : row.children()) {
      if (!child.name().equals("c")) {
        cells.add(child);
        continue;
      }
      Map<String, String> attributes = new TreeMap<>(child.attributes());
      String reference = attributes.get("r");
      if (reference == null) {
        reference = CellPlace.letters(next) + number;
        attributes.put("r", reference);
      }
      next = Places.place("", reference).column() + 1;
      attributes.remove("s", "0");
      attributes.remove("t", "n");
      if (attributes.size() > 1 || !child.children().isEmpty()) {
        cells.add(child.with(attributes, child.children()));
      }
    }
    return cells;
  }

  private static List<XmlElement> columns(XmlElement cols, Set<Integer> own) {
    TreeMap<Integer, XmlElement> starts = new TreeMap<>();
    for (XmlElement col : cols.all("col")) {
      int first = Integer.parseInt(col.get("min"));
      int last = Integer.parseInt(col.get("max"));
      int from = first;
      for (int column : own) {
        int number = column + 1;
        if (number >= from && number <= last) {
          put(starts, col, from, number - 1);
          put(starts, col, number, number);
          from = number + 1;
        }
      }
      put(starts, col, from, last);
    }
    return joined(starts.values(), own);
  }

  private static void put(Map<Integer, XmlElement> starts, XmlElement col, int first, int last) {
    if (first <= last) {
      Map<String, String> attributes = new TreeMap<>(col.attributes());
      attributes.put("min", String.valueOf(first));
      attributes.put("max", String.valueOf(last));
      starts.put(first, col.with(attributes, col.children()));
    }
  }

  /** Neighbours of equal look become one again, but never across a column of ours. */
  private static List<XmlElement> joined(Iterable<XmlElement> cols, Set<Integer> own) {
    List<XmlElement> joined = new ArrayList<>();
    for (XmlElement col : cols) {
      XmlElement last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
      if (last != null && joins(last, col, own)) {
        Map<String, String> attributes = new TreeMap<>(last.attributes());
        attributes.put("max", col.get("max"));
        joined.set(joined.size() - 1, last.with(attributes, last.children()));
      } else {
        joined.add(col);
      }
    }
    return joined;
  }

  private static boolean joins(XmlElement last, XmlElement col, Set<Integer> own) {
    int end = Integer.parseInt(last.get("max"));
    int start = Integer.parseInt(col.get("min"));
    if (end + 1 != start || own.contains(end - 1) || own.contains(start - 1)) {
      return false;
    }
    Map<String, String> one = new TreeMap<>(last.attributes());
    Map<String, String> other = new TreeMap<>(col.attributes());
    List.of("min", "max")
        .forEach(
            each -> {
              one.remove(each);
              other.remove(each);
            });
    return one.equals(other);
  }
}
