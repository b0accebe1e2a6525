package fineweight.workbook.xlsx.splice;

import fineweight.workbook.CellValue;
import fineweight.workbook.xlsx.sheet.CellWriter;
import fineweight.workbook.xlsx.sheet.CellXml;
import fineweight.workbook.xlsx.xml.StartTag;
import fineweight.workbook.xlsx.xml.XmlText;
import java.io.IOException;

/** How a formula's result is written. */
final class StoredResult {
  private StoredResult() {}

  /** The type that the cell says; empty for a number. */
  private static String type(CellValue value) {
    if (value instanceof CellValue.Number) {
      return "";
    }
    if (value instanceof CellValue.Bool) {
      return "b";
    }
    return value instanceof CellValue.Error ? "e" : "str";
  }

  /**
   * Puts a result in the place of the one that the cell has, or behind its formula.
   *
   * @param prefix of the main namespace, empty for none
   */
  static void put(Cutting cutting, CellXml cell, CellValue fresh, String prefix)
      throws IOException {
    String colon = prefix.isEmpty() ? "" : prefix + ":";
    String open = StartTag.opened(cutting.text(cell.start(), cell.tagEnd()));
    String bare = StartTag.without(open, "t");
    String type = type(fresh);
    boolean single = cell.tagEnd() == cell.end();
    String rest = single ? "" : cutting.text(cell.tagEnd(), cell.end());
    // An end tag is plain letters: as many bytes as characters.
    long endTag = cell.end() - (rest.length() - rest.lastIndexOf("</"));
    cutting.replace(
        cell.start(), cell.tagEnd(), type.isEmpty() ? bare : StartTag.with(bare, "t", type));
    if (cell.valueStart() >= 0) {
      cutting.copyToTag(cell.valueStart());
      cutting.dropTo(cell.valueEnd());
    } else if (!single) {
      cutting.copyToTag(endTag);
    }
    cutting.write(element(colon + "v", fresh));
    if (single) {
      cutting.write("</" + colon + "c>");
    }
  }

  /**
   * @param name of the element, with its prefix
   */
  private static String element(String name, CellValue value) {
    return "<" + name + ">" + content(value) + "</" + name + ">";
  }

  private static String content(CellValue value) {
    if (value instanceof CellValue.Number number) {
      return CellWriter.plain(number.value());
    }
    if (value instanceof CellValue.Bool bool) {
      return bool.value() ? "1" : "0";
    }
    if (value instanceof CellValue.Error error) {
      return XmlText.content(error.code());
    }
    return value instanceof CellValue.Text text
        ? XmlText.content(XmlText.escapeCell(text.value()))
        : "";
  }
}
