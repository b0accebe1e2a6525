package fineweight.tool;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A workbook laid out by hand, and what must stand in our columns. Filled line by line. */
final class Layout {
  private final String name;
  private final Book book = Book.xlsx();
  private final Map<Integer, String> expected = new TreeMap<>();
  private final List<String> merged = new ArrayList<>();
  private String sheet = "";
  private int row;
  private int headerRow;

  private Layout(String name) {
    this.name = name;
  }

  static List<Layout> all() {
    List<Layout> layouts = new ArrayList<>();
    try (InputStream bytes = Layout.class.getResourceAsStream("layouts.txt")) {
      String text = new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
      for (String line : text.split("\n", -1)) {
        if (line.startsWith("== ")) {
          layouts.add(new Layout(line.substring(3)));
        } else if (!line.startsWith("# ") && !layouts.isEmpty()) {
          layouts.get(layouts.size() - 1).line(line);
        }
      }
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    return layouts;
  }

  private void line(String line) {
    if (line.startsWith("sheet ")) {
      begin(line.substring(6));
      return;
    }
    if (line.startsWith("merge ")) {
      merged.add(line.substring(6));
      return;
    }
    if (sheet.isEmpty()) {
      begin("List");
    }
    String[] parts = line.split(" ?=> ", -1);
    row++;
    if (parts.length > 1 && parts[1].equals("headings")) {
      headerRow = row;
    } else if (parts.length > 1) {
      expected.put(row, parts[1].strip());
    }
    String[] cells = parts[0].split("\\|", -1);
    Object[] contents = new Object[cells.length];
    for (int i = 0; i < cells.length; i++) {
      contents[i] = content(cells[i].strip());
    }
    book.rowAt(sheet, row, contents);
  }

  private void begin(String next) {
    sheet = next;
    row = 0;
    book.sheet(sheet);
  }

  private static Object content(String cell) {
    if (cell.isEmpty()) {
      return null;
    }
    if (cell.startsWith("'")) {
      return cell.substring(1);
    }
    return cell.matches("[0-9]+(\\.[0-9]+)?")
        ? new java.math.BigDecimal(cell)
        : cell.replace('^', '\n');
  }

  Path save(Path file) throws IOException {
    merged.forEach(area -> book.merge(sheet, area));
    return book.save(file);
  }

  /** The sheet of the list: the last one. */
  String sheet() {
    return sheet;
  }

  /** From 1. */
  int headerRow() {
    return headerRow;
  }

  /** What must stand in a row, by row from 1. */
  Map<Integer, String> expected() {
    return expected;
  }

  @Override
  public String toString() {
    return name;
  }
}
