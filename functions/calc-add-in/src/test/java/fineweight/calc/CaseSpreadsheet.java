package fineweight.calc;

import fineweight.sheet.cases.CaseCell;
import fineweight.sheet.cases.CaseFormula;
import fineweight.sheet.cases.CaseFormula.Filled;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The cases as a flat .fods: formulas without results, so that an office must calculate. */
final class CaseSpreadsheet {
  private final Map<Integer, Map<Integer, String>> cells = new TreeMap<>();

  private CaseSpreadsheet() {}

  static String of(List<CaseFormula> cases) {
    CaseSpreadsheet sheet = new CaseSpreadsheet();
    cases.forEach(sheet::put);
    return sheet.xml();
  }

  private void put(CaseFormula one) {
    int height = one.one().expected().cells().size();
    String matrix =
        one.one().expected().column()
            ? " table:number-matrix-columns-spanned=\"1\" table:number-matrix-rows-spanned=\""
                + height
                + "\""
            : "";
    put(
        one.row(),
        0,
        "<table:table-cell" + matrix + " table:formula=\"of:=" + escaped(one.formula()) + "\"/>");
    for (Filled filled : one.filled()) {
      put(filled.row(), filled.column(), cell(filled.cell()));
    }
  }

  private void put(int row, int column, String xml) {
    cells.computeIfAbsent(row, key -> new TreeMap<>()).put(column, xml);
  }

  private static String cell(CaseCell cell) {
    return cell.kind() == CaseCell.Kind.NUMBER
        ? "<table:table-cell office:value-type=\"float\" office:value=\"" + cell.text() + "\"/>"
        : "<table:table-cell office:value-type=\"string\"><text:p>"
            + escaped(cell.text())
            + "</text:p></table:table-cell>";
  }

  private String xml() {
    StringBuilder xml =
        new StringBuilder(
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
              xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"
              xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
              xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2"
              office:version="1.3"
              office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
            <office:body><office:spreadsheet><table:table table:name="cases">
            """);
    int next = 0;
    for (Map.Entry<Integer, Map<Integer, String>> row : cells.entrySet()) {
      for (; next < row.getKey(); next++) {
        xml.append("<table:table-row><table:table-cell/></table:table-row>\n");
      }
      append(xml, row.getValue());
      next++;
    }
    return xml.append("</table:table></office:spreadsheet></office:body></office:document>\n")
        .toString();
  }

  private static void append(StringBuilder xml, Map<Integer, String> row) {
    xml.append("<table:table-row>");
    int next = 0;
    for (Map.Entry<Integer, String> cell : row.entrySet()) {
      for (; next < cell.getKey(); next++) {
        xml.append("<table:table-cell/>");
      }
      xml.append(cell.getValue());
      next++;
    }
    xml.append("</table:table-row>\n");
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
  }
}
