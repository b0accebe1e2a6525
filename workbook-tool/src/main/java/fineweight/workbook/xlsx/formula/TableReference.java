package fineweight.workbook.xlsx.formula;

import fineweight.workbook.SheetLayout;
import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.xlsx.formula.Reference.Corner;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what stands behind a table's name, such as {@code [[#This Row],[Weight]]}. */
final class TableReference {
  private static final Pattern ITEM = Pattern.compile("\\[((?:[^'\\[\\]]|'.)*)\\]");

  private final Vocabulary.PlacedTable table;
  private final List<String> columns = new ArrayList<>();
  private final List<String> parts = new ArrayList<>();

  private TableReference(Vocabulary.PlacedTable table) {
    this.table = table;
  }

  /**
   * @param inside the text between the outer brackets; empty for the table's data
   */
  static Reference resolve(Vocabulary.PlacedTable table, String inside) {
    TableReference reference = new TableReference(table);
    Matcher items = ITEM.matcher(inside);
    boolean nested = false;
    while (items.find()) {
      nested = true;
      reference.item(items.group(1));
    }
    if (!nested && !inside.isBlank()) {
      reference.item(inside);
    } else if (inside.startsWith("@")) {
      reference.parts.add("#this row");
    }
    return reference.area();
  }

  private void item(String raw) {
    String text = raw.strip();
    if (text.startsWith("@")) {
      parts.add("#this row");
      text = text.substring(1);
    }
    if (text.startsWith("#")) {
      parts.add(text.toLowerCase(Locale.ROOT));
    } else if (!text.isEmpty()) {
      columns.add(text.replaceAll("'(.)", "$1"));
    }
  }

  private Reference area() {
    SheetLayout.Table shape = table.part().table();
    Area whole = shape.area();
    int left = whole.firstColumn();
    int right = whole.lastColumn();
    if (!columns.isEmpty()) {
      int first = column(columns.get(0));
      int last = column(columns.get(columns.size() - 1));
      if (first >= 0 && last >= 0) {
        left = whole.firstColumn() + Math.min(first, last);
        right = whole.firstColumn() + Math.max(first, last);
      }
    }
    if (parts.contains("#this row")) {
      return Reference.cells(
          table.sheet(), new Corner(0, true, left, false), new Corner(0, true, right, false));
    }
    int dataTop = whole.firstRow() + shape.headerRows();
    int dataBottom = whole.lastRow() - shape.totalsRows();
    boolean all = parts.contains("#all");
    boolean data = all || parts.isEmpty() || parts.contains("#data");
    int top =
        all || parts.contains("#headers") ? whole.firstRow() : data ? dataTop : dataBottom + 1;
    int bottom =
        all || parts.contains("#totals") ? whole.lastRow() : data ? dataBottom : dataTop - 1;
    return Reference.cells(table.sheet(), Corner.fixed(top, left), Corner.fixed(bottom, right));
  }

  private int column(String name) {
    List<String> names = table.part().columns();
    for (int i = 0; i < names.size(); i++) {
      if (names.get(i).equalsIgnoreCase(name)) {
        return i;
      }
    }
    return -1;
  }
}
