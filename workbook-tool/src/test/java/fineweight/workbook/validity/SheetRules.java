package fineweight.workbook.validity;

import fineweight.workbook.CellPlace;
import fineweight.workbook.oracle.parts.Places;
import fineweight.workbook.oracle.parts.Places.Area;
import fineweight.workbook.oracle.parts.XmlElement;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A worksheet part. */
final class SheetRules {
  private static final Map<String, String> LISTS =
      Map.of(
          "mergeCells", "mergeCell",
          "dataValidations", "dataValidation",
          "tableParts", "tablePart");

  private final String part;
  private final XmlElement sheet;
  private final StyleRules styles;
  private final TextRules texts;
  private final List<String> findings;
  private final Set<String> masters = new HashSet<>();
  private final Set<String> sharers = new HashSet<>();

  SheetRules(
      String part, XmlElement sheet, StyleRules styles, TextRules texts, List<String> findings) {
    this.part = part;
    this.sheet = sheet;
    this.styles = styles;
    this.texts = texts;
    this.findings = findings;
  }

  void check() {
    ElementOrder.check(part, sheet, ElementOrder.WORKSHEET, findings);
    for (XmlElement list : sheet.children()) {
      if (LISTS.containsKey(list.name())) {
        ElementOrder.checkCount(part, list, LISTS.get(list.name()), findings);
      }
    }
    sheet.child("cols").ifPresent(this::checkColumns);
    sheet.child("sheetData").ifPresent(this::checkRows);
    sharers.removeAll(masters);
    sharers.forEach(each -> findings.add(part + ": shared formula " + each + " has no text"));
  }

  private void checkColumns(XmlElement cols) {
    int last = 0;
    for (XmlElement col : cols.all("col")) {
      int min = Integer.parseInt(col.get("min"));
      int max = Integer.parseInt(col.get("max"));
      if (min <= last || max < min || max > Area.LAST_COLUMN + 1) {
        findings.add(part + ": column widths " + min + "-" + max + " out of order");
      }
      checkStyle(col.get("style"), "columns " + min + "-" + max);
      last = max;
    }
    if (cols.all("col").isEmpty()) {
      findings.add(part + ": empty cols");
    }
  }

  private void checkRows(XmlElement data) {
    int last = 0;
    for (XmlElement row : data.all("row")) {
      int number = row.get("r").isEmpty() ? last + 1 : Integer.parseInt(row.get("r"));
      if (number <= last || number > Area.LAST_ROW + 1) {
        findings.add(part + ": row " + number + " out of order");
      }
      last = number;
      checkStyle(row.get("s"), "row " + number);
      checkCells(row, number);
    }
  }

  private void checkCells(XmlElement row, int number) {
    int last = -1;
    String[] spans = row.get("spans").split("[: ]");
    for (XmlElement cell : row.all("c")) {
      CellPlace place =
          cell.get("r").isEmpty()
              ? new CellPlace("", number - 1, last + 1)
              : Places.place("", cell.get("r"));
      if (place.row() != number - 1
          || place.column() <= last
          || place.column() > Area.LAST_COLUMN) {
        findings.add(part + ": cell " + cell.get("r") + " out of order in row " + number);
      }
      last = place.column();
      if (spans.length == 2
          && (last + 1 < Integer.parseInt(spans[0]) || last + 1 > Integer.parseInt(spans[1]))) {
        findings.add(part + ": " + place + " lies outside the spans of its row");
      }
      checkStyle(cell.get("s"), place.toString());
      checkCell(cell, place);
    }
  }

  private void checkCell(XmlElement cell, CellPlace place) {
    String value = cell.child("v").map(XmlElement::text).orElse("");
    String kind = cell.get("t");
    boolean inOrder =
        cell.children().stream()
            .map(XmlElement::name)
            .toList()
            .toString()
            .matches("\\[(f)?(, )?(v)?(, )?(is)?(, )?(extLst)?\\]");
    if (!inOrder) {
      findings.add(part + ": " + place + " has its children out of order");
    }
    boolean number = kind.isEmpty() || kind.equals("n");
    if (number && !value.isBlank() && !isNumber(value.strip())) {
      findings.add(part + ": " + place + " is no number: " + value);
    }
    if (kind.equals("s")
        && (!value.strip().matches("\\d+") || beyond(value, texts.texts().size()))) {
      findings.add(part + ": " + place + " has no text " + value);
    }
    if (kind.equals("str") && cell.child("f").isEmpty()) {
      findings.add(part + ": " + place + " is a formula's text without a formula");
    }
    cell.child("f").filter(f -> f.get("t").equals("shared")).ifPresent(this::noteShared);
  }

  private void noteShared(XmlElement formula) {
    sharers.add(formula.get("si"));
    if (!formula.text().isBlank()) {
      masters.add(formula.get("si"));
    }
  }

  private static boolean isNumber(String value) {
    try {
      return new BigDecimal(value).precision() > 0;
    } catch (NumberFormatException e) {
      return false;
    }
  }

  private void checkStyle(String style, String where) {
    if (!style.isEmpty() && beyond(style, styles.cellFormats())) {
      findings.add(part + ": " + where + " has no style " + style);
    }
  }

  private static boolean beyond(String index, int size) {
    return Long.parseLong(index.strip()) >= size;
  }
}
