package fineweight.workbook.corpus;

import fineweight.workbook.CellPlace;
import fineweight.workbook.oracle.SampleBook;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;

/** A legal workbook in one of the many spellings that the format allows, drawn by lot. */
final class RandomBook {
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String KIND = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
  private static final String RELATION =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  private final Random random;
  private final String prefix;
  private final char quote;
  private final boolean texts;
  private final boolean styles;
  private final boolean references;
  private int lastColumn = -1;
  private int lastRow = -1;

  RandomBook(long seed) {
    random = new Random(seed);
    prefix = random.nextInt(4) == 0 ? "x:" : "";
    quote = random.nextInt(4) == 0 ? '\'' : '"';
    texts = random.nextInt(4) != 0;
    styles = random.nextInt(4) != 0;
    references = random.nextInt(4) != 0;
  }

  /** From 0; -1 for an empty sheet. Known once the file is built. */
  int lastColumn() {
    return lastColumn;
  }

  int lastRow() {
    return lastRow;
  }

  byte[] file() {
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put("[Content_Types].xml", types());
    parts.put("_rels/.rels", relations("officeDocument", "xl/workbook.xml"));
    parts.put("xl/workbook.xml", workbook());
    parts.put("xl/_rels/workbook.xml.rels", workbookRelations());
    String sheet = sheet();
    parts.put("xl/worksheets/sheet1.xml", sheet);
    parts.put(
        "xl/worksheets/sheet2.xml",
        element("worksheet xmlns" + colon() + "=" + q(MAIN), element("sheetData", formulaRow())));
    if (texts) {
      String items = "<si><t>one</t></si><si><r><t>tw</t></r><r><t>o</t></r></si><si><t/></si>";
      parts.put("xl/sharedStrings.xml", "<sst xmlns=\"" + MAIN + "\">" + items + "</sst>");
    }
    if (styles) {
      parts.put("xl/styles.xml", styleSheet());
    }
    return SampleBook.zip(parts);
  }

  private String formulaRow() {
    return element(
        "row",
        element("c", element("f", "SUM(Coins!A1:ZZ99)") + element("v", "5"))
            + element("c", element("f", "1+1") + element("v", "2")));
  }

  private String sheet() {
    StringBuilder rows = new StringBuilder();
    int row = 0;
    int count = random.nextInt(9);
    for (int i = 0; i < count; i++) {
      row += references && random.nextInt(5) == 0 ? 3 : 1;
      rows.append(gap()).append(row(row));
      lastRow = row - 1;
    }
    String data = count == 0 && random.nextBoolean() ? "<" + prefix + "sheetData/>" : null;
    String start = random.nextInt(3) == 0 ? "<?xml version='1.0' encoding='UTF-8'?>\n" : "";
    String hint =
        lastRow < 0 || random.nextBoolean()
            ? ""
            : "<"
                + prefix
                + "dimension ref="
                + q("A1:" + CellPlace.letters(Math.max(0, lastColumn)) + (lastRow + 1))
                + "/>";
    String widths =
        random.nextInt(3) == 0
            ? element("cols", "<" + prefix + "col min=\"1\" max=\"2\" width=\"9\"/>")
            : "";
    String end =
        random.nextBoolean()
            ? "<"
                + prefix
                + "pageMargins left='1' right='1' top='1' bottom='1' header='1' footer='1'/>"
            : "";
    return start
        + element(
            "worksheet xmlns" + colon() + "=" + q(MAIN),
            hint + widths + (data == null ? element("sheetData", rows + gap()) : data) + end);
  }

  private String row(int number) {
    String reference = references ? " r=" + q(String.valueOf(number)) : "";
    if (random.nextInt(7) == 0) {
      return "<" + prefix + "row" + reference + " ht=" + q("20") + "/>";
    }
    StringBuilder cells = new StringBuilder();
    int column = -1;
    int count = random.nextInt(6);
    for (int i = 0; i < count; i++) {
      column += references && random.nextInt(4) == 0 ? 2 : 1;
      cells.append(gap()).append(cell(column, number));
      lastColumn = Math.max(lastColumn, column);
    }
    return element("row" + reference, cells + gap());
  }

  private String cell(int column, int row) {
    String start = "c" + (references ? " r=" + q(CellPlace.letters(column) + row) : "");
    String look = styles && random.nextBoolean() ? " s=" + q("1") : "";
    return switch (random.nextInt(9)) {
      case 0 -> "<" + prefix + start + look + "/>";
      case 1 -> element(start + look + " t=" + q("b"), element("v", "1"));
      case 2 -> element(start + look + " t=" + q("e"), element("v", "#N/A"));
      case 3 ->
          element(
              start + look + " t=" + q("str"), element("f", "\"a\"&amp;1") + element("v", "a1"));
      case 4 -> element(start + look, element("f", "SUM(A1:B2)") + element("v", "1.50"));
      case 5 ->
          texts
              ? element(
                  start + look + " t=" + q("s"), element("v", String.valueOf(random.nextInt(3))))
              : element(start + look, element("v", "7"));
      case 6 ->
          element(
              start + look + " t=" + q("inlineStr"),
              element("is", element("t xml:space=" + q("preserve"), " <![CDATA[a<b]]> &#10;c")));
      default -> element(start + look, element("v", random.nextInt(5000) + ".1000000000000001"));
    };
  }

  private String gap() {
    return switch (random.nextInt(8)) {
      case 0 -> "\n  ";
      case 1 -> "<!-- " + prefix + "row r=\"1\" -->";
      case 2 -> "<?keep this?>";
      default -> "";
    };
  }

  private String styleSheet() {
    return "<styleSheet xmlns=\""
        + MAIN
        + "\"><fonts count=\"1\"><font/></fonts><fills count=\"1\">"
        + "<fill/></fills><borders count=\"1\"><border/></borders><cellStyleXfs count=\"1\"><xf/>"
        + "</cellStyleXfs><cellXfs count=\"2\"><xf/><xf numFmtId=\"14\" applyNumberFormat=\"1\"/>"
        + "</cellXfs></styleSheet>";
  }

  private String workbook() {
    return "<workbook xmlns=\""
        + MAIN
        + "\" xmlns:r=\""
        + RELATION
        + "\"><sheets>"
        + "<sheet name=\"Coins\" sheetId=\"1\" r:id=\"rId1\"/>"
        + "<sheet name=\"Totals\" sheetId=\"2\" r:id=\"rId2\"/></sheets></workbook>";
  }

  private String workbookRelations() {
    String all =
        relations("worksheet", "worksheets/sheet1.xml", "worksheet", "worksheets/sheet2.xml");
    String more =
        (texts ? relation(8, "sharedStrings", "sharedStrings.xml") : "")
            + (styles ? relation(9, "styles", "styles.xml") : "");
    return all.replace("</Relationships>", more + "</Relationships>");
  }

  private static String relations(String... typesAndTargets) {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < typesAndTargets.length; i += 2) {
      all.append(relation(i / 2 + 1, typesAndTargets[i], typesAndTargets[i + 1]));
    }
    return "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
        + all
        + "</Relationships>";
  }

  private static String relation(int number, String type, String target) {
    return "<Relationship Id=\"rId%d\" Type=\"%s/%s\" Target=\"%s\"/>"
        .formatted(number, RELATION, type, target);
  }

  private String types() {
    String all =
        "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default"
            + " Extension=\"rels\""
            + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
            + type("workbook.xml", "sheet.main")
            + type("worksheets/sheet1.xml", "worksheet")
            + type("worksheets/sheet2.xml", "worksheet");
    return all
        + (texts ? type("sharedStrings.xml", "sharedStrings") : "")
        + (styles ? type("styles.xml", "styles") : "")
        + "</Types>";
  }

  private static String type(String part, String kind) {
    return "<Override PartName=\"/xl/%s\" ContentType=\"%s%s+xml\"/>".formatted(part, KIND, kind);
  }

  private String element(String start, String content) {
    String name = start.split(" ")[0];
    return "<" + prefix + start + ">" + content + "</" + prefix + name + ">";
  }

  private String colon() {
    return prefix.isEmpty() ? "" : ":x";
  }

  private String q(String value) {
    return quote + value + quote;
  }
}
