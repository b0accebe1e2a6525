package fineweight.workbook.oracle.formula;

import fineweight.workbook.CellPlace;
import fineweight.workbook.oracle.parts.PackageParts;
import fineweight.workbook.oracle.parts.Places;
import fineweight.workbook.oracle.parts.Places.Area;
import fineweight.workbook.oracle.parts.XmlElement;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The tables of a workbook and what a reference by table and column means. */
final class TableAreas {
  private static final Pattern COLUMN = Pattern.compile("\\[((?:[^\\[\\]']|'.)*)\\]");

  private final List<Table> tables = new ArrayList<>();

  record Table(String name, Area area, List<String> columns) {}

  TableAreas(PackageParts parts) throws IOException {
    for (PackageParts.Sheet sheet : parts.sheets()) {
      for (String part : parts.tables(sheet)) {
        XmlElement table = parts.tree(part);
        List<String> columns =
            table
                .child("tableColumns")
                .map(each -> each.all("tableColumn"))
                .orElse(List.of())
                .stream()
                .map(each -> each.get("name"))
                .toList();
        tables.add(
            new Table(
                table.get("displayName"), Places.area(sheet.name(), table.get("ref")), columns));
      }
    }
  }

  Optional<Table> of(FormulaReferences.TableColumns reference, CellPlace home) {
    return tables.stream()
        .filter(
            each ->
                reference.table().isEmpty()
                    ? each.area().contains(home)
                    : each.name().equalsIgnoreCase(reference.table()))
        .findFirst();
  }

  /** The table named by a lone word, if there is one. */
  Optional<Table> named(String word) {
    return tables.stream().filter(each -> each.name().equalsIgnoreCase(word)).findFirst();
  }

  /** The columns that the words in brackets name, over all rows of the table or only this one. */
  static Area precise(Table table, String inside, CellPlace home) {
    Area all = table.area();
    boolean thisRow = inside.contains("@") || inside.contains("#This Row");
    List<Integer> columns = new ArrayList<>();
    Matcher named = COLUMN.matcher(inside.contains("[") ? inside : "[" + inside + "]");
    while (named.find()) {
      String name = named.group(1).replaceFirst("^@", "").replaceAll("'(.)", "$1");
      for (int i = 0; i < table.columns().size(); i++) {
        if (table.columns().get(i).replace("_x000a_", "\n").equalsIgnoreCase(name)) {
          columns.add(i);
        }
      }
    }
    int first = columns.stream().min(Integer::compare).orElse(0);
    int last = columns.stream().max(Integer::compare).orElse(all.lastColumn() - all.firstColumn());
    return new Area(
        all.sheet(),
        thisRow ? home.row() : all.firstRow(),
        all.firstColumn() + first,
        thisRow ? home.row() : all.lastRow(),
        all.firstColumn() + last);
  }
}
