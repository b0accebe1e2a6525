package fineweight.workbook.validity;

import fineweight.workbook.CellPlace;
import fineweight.workbook.oracle.parts.PackageParts;
import fineweight.workbook.oracle.parts.Places;
import fineweight.workbook.oracle.parts.Places.Area;
import fineweight.workbook.oracle.parts.XmlElement;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Table parts: width, names, numbers, header cells, and no two over each other. */
final class TableRules {
  private final PackageParts parts;
  private final TextRules texts;
  private final List<String> findings;
  private final Set<String> ids = new HashSet<>();
  private final Set<String> names = new HashSet<>();

  private TableRules(PackageParts parts, TextRules texts, List<String> findings) {
    this.parts = parts;
    this.texts = texts;
    this.findings = findings;
  }

  static void check(PackageParts parts, TextRules texts, List<String> findings) throws IOException {
    TableRules rules = new TableRules(parts, texts, findings);
    for (PackageParts.Sheet sheet : parts.sheets()) {
      List<Area> areas = new ArrayList<>();
      for (String part : parts.tables(sheet)) {
        rules.checkTable(sheet, part, areas);
      }
    }
  }

  private void checkTable(PackageParts.Sheet sheet, String part, List<Area> others)
      throws IOException {
    XmlElement table = parts.tree(part);
    ElementOrder.check(part, table, ElementOrder.TABLE, findings);
    WorkbookRules.unique(ids, table.get("id"), part + ": table id", findings);
    WorkbookRules.unique(
        names, table.get("displayName").toLowerCase(Locale.ROOT), part + ": table name", findings);
    Area area = Places.area(sheet.name(), table.get("ref"));
    for (Area other : others) {
      if (meet(area, other)) {
        findings.add(part + ": lies over another table of the sheet");
      }
    }
    others.add(area);
    table.child("tableColumns").ifPresent(columns -> checkColumns(part, area, columns));
    if (!table.get("headerRowCount").equals("0")) {
      checkHeaders(sheet, part, table, area);
    }
    table
        .child("autoFilter")
        .map(each -> Places.area(sheet.name(), each.get("ref")))
        .filter(each -> each.lastColumn() != area.lastColumn())
        .ifPresent(each -> findings.add(part + ": filter and table differ in width"));
  }

  private void checkColumns(String part, Area area, XmlElement columns) {
    ElementOrder.checkCount(part, columns, "tableColumn", findings);
    List<XmlElement> all = columns.all("tableColumn");
    if (all.size() != area.lastColumn() - area.firstColumn() + 1) {
      findings.add(part + ": " + all.size() + " columns do not fill the table's width");
    }
    Set<String> columnIds = new HashSet<>();
    Set<String> columnNames = new HashSet<>();
    for (XmlElement column : all) {
      WorkbookRules.unique(columnIds, column.get("id"), part + ": column id", findings);
      WorkbookRules.unique(
          columnNames,
          column.get("name").toLowerCase(Locale.ROOT),
          part + ": column name",
          findings);
    }
  }

  private void checkHeaders(PackageParts.Sheet sheet, String part, XmlElement table, Area area)
      throws IOException {
    XmlElement data = parts.tree(sheet.part()).child("sheetData").orElseThrow();
    int column = area.firstColumn();
    for (XmlElement each :
        table.child("tableColumns").map(c -> c.all("tableColumn")).orElse(List.of())) {
      String reference = CellPlace.letters(column++) + (area.firstRow() + 1);
      String header =
          data.all("row").stream()
              .flatMap(row -> row.all("c").stream())
              .filter(cell -> cell.get("r").equals(reference))
              .map(this::text)
              .findFirst()
              .orElse("");
      String name = each.get("name").replaceAll("_x000[aA]_", "\n");
      if (!header.replace("\r", "").equals(name.replace("_x000d_", ""))) {
        findings.add(part + ": header " + reference + " is \"" + header + "\", not " + name);
      }
    }
  }

  private String text(XmlElement cell) {
    String value = cell.child("v").map(XmlElement::text).orElse("");
    return switch (cell.get("t")) {
      case "s" -> {
        int index = Integer.parseInt(value.strip());
        yield index < texts.texts().size() ? texts.texts().get(index) : "";
      }
      case "inlineStr" -> cell.child("is").map(TextRules::text).orElse("");
      default -> value;
    };
  }

  private static boolean meet(Area one, Area other) {
    return one.firstRow() <= other.lastRow()
        && other.firstRow() <= one.lastRow()
        && one.firstColumn() <= other.lastColumn()
        && other.firstColumn() <= one.lastColumn();
  }
}
