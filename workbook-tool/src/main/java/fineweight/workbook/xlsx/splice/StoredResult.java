package fineweight.workbook.xlsx.splice;

import fineweight.workbook.CellValue;
import fineweight.workbook.xlsx.sheet.CellWriter;
import fineweight.workbook.xlsx.xml.XmlText;

/** How a formula's result is written. */
final class StoredResult {
  private StoredResult() {}

  /** The type that the cell says; empty for a number. */
  static String type(CellValue value) {
    if (value instanceof CellValue.Number) {
      return "";
    }
    if (value instanceof CellValue.Bool) {
      return "b";
    }
    return value instanceof CellValue.Error ? "e" : "str";
  }

  /**
   * @param name of the element, with its prefix
   */
  static String element(String name, CellValue value) {
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
