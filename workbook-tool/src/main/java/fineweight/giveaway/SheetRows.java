package fineweight.giveaway;

import fineweight.workbook.CellPlace;
import fineweight.workbook.xlsx.xml.XmlText;
import java.io.InputStream;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * The rows of a sheet as they are given away: heights, formats and formulas at their places, the
 * contents of all other cells gone. Results of formulas go too; an office reckons them anew.
 */
final class SheetRows {
  private static final List<String> ROW = List.of("s", "customFormat", "ht", "customHeight");
  private static final String NUMBER = "[0-9]{1,9}(\\.[0-9]{1,9})?";
  private static final String FLAG = "0|1|true|false";
  private static final String CELL = "[A-Z]{1,3}[0-9]{1,7}";

  private final String sheet;
  private final KeptCells kept;
  private final FormulaRules formulas;
  private final Findings findings;
  private final Set<String> droppedShares = new HashSet<>();
  private final StringBuilder out = new StringBuilder();
  private XMLStreamReader in;
  private int row = -1;
  private int column = -1;

  SheetRows(String sheet, KeptCells kept, FormulaRules formulas, Findings findings) {
    this.sheet = sheet;
    this.kept = kept;
    this.formulas = formulas;
    this.findings = findings;
  }

  /** The rows as markup in the default namespace. */
  String of(InputStream part) throws XMLStreamException {
    in = SheetFrame.parser().createXMLStreamReader(part);
    boolean inside = false;
    while (in.hasNext()) {
      int event = in.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        switch (in.getLocalName()) {
          case "sheetData" -> inside = true;
          case "row" -> {
            if (inside) {
              row();
            }
          }
          default -> {
            // Everything else of the sheet goes through the sieve.
          }
        }
      } else if (event == XMLStreamConstants.END_ELEMENT && in.getLocalName().equals("sheetData")) {
        break;
      }
    }
    return out.toString();
  }

  private void row() throws XMLStreamException {
    String number = in.getAttributeValue(null, "r");
    row = number == null ? row + 1 : Integer.parseInt(number) - 1;
    column = -1;
    StringBuilder tag = new StringBuilder("<row r=\"" + (row + 1) + "\"");
    for (String name : ROW) {
      String value = in.getAttributeValue(null, name);
      if (value != null && value.matches(NUMBER + "|" + FLAG)) {
        tag.append(" " + name + "=\"" + value + "\"");
      }
    }
    out.append(tag).append('>');
    while (in.next() != XMLStreamConstants.END_ELEMENT || !in.getLocalName().equals("row")) {
      if (in.isStartElement() && in.getLocalName().equals("c")) {
        cell();
      }
    }
    out.append("</row>");
  }

  private void cell() throws XMLStreamException {
    String reference = in.getAttributeValue(null, "r");
    column = reference == null ? column + 1 : columnOf(reference);
    String style = in.getAttributeValue(null, "s");
    String format = style != null && style.matches("[0-9]{1,6}") ? " s=\"" + style + "\"" : "";
    String formula = null;
    boolean filled = false;
    while (in.next() != XMLStreamConstants.END_ELEMENT || !in.getLocalName().equals("c")) {
      if (in.isStartElement()) {
        switch (in.getLocalName()) {
          case "f" -> formula = formula();
          case "v", "is" -> filled = true;
          default -> {
            // Pieces of a text.
          }
        }
      }
    }
    write(format, formula, filled);
  }

  private static int columnOf(String reference) {
    int column = 0;
    for (char letter : reference.toCharArray()) {
      if (letter >= 'A' && letter <= 'Z') {
        column = column * 26 + letter - 'A' + 1;
      }
    }
    return column - 1;
  }

  private void write(String format, String formula, boolean filled) {
    String place = " r=\"" + CellPlace.letters(column) + (row + 1) + "\"";
    Optional<KeptCells.Content> content = kept.at(row, column);
    if (formula != null && !formula.isEmpty()) {
      out.append("<c").append(place).append(format).append('>').append(formula).append("</c>");
    } else if (content.isPresent() && content.get().number()) {
      out.append("<c" + place + format + "><v>" + content.get().text() + "</v></c>");
    } else if (content.isPresent()) {
      String text = XmlText.content(XmlText.escapeCell(content.get().text()));
      out.append("<c" + place + format + " t=\"inlineStr\"><is><t xml:space=\"preserve\">" + text)
          .append("</t></is></c>");
    } else {
      if (filled && formula == null) {
        findings.removed("content of a cell on \"" + sheet + "\"");
      }
      if (!format.isEmpty()) {
        out.append("<c").append(place).append(format).append("/>");
      }
    }
  }

  /** The formula's element; empty if it goes. */
  private String formula() throws XMLStreamException {
    String type = in.getAttributeValue(null, "t");
    String area = in.getAttributeValue(null, "ref");
    String share = in.getAttributeValue(null, "si");
    String text = in.getElementText();
    Optional<String> objection = objection(type, share, text);
    if (objection.isPresent()) {
      findings.removed("formula on \"" + sheet + "\" that " + objection.get());
      if ("shared".equals(type)) {
        droppedShares.add(share);
      }
      return "";
    }
    StringBuilder tag = new StringBuilder("<f");
    if ("shared".equals(type) || "array".equals(type)) {
      tag.append(" t=\"" + type + "\"");
    }
    if (area != null && area.matches(CELL + "(:" + CELL + ")?")) {
      tag.append(" ref=\"" + area + "\"");
    }
    if ("shared".equals(type) && share != null && share.matches("[0-9]{1,9}")) {
      tag.append(" si=\"" + share + "\"");
    }
    return tag.append('>').append(XmlText.content(text)).append("</f>").toString();
  }

  private Optional<String> objection(String type, String share, String text) {
    if ("dataTable".equals(type)) {
      return Optional.of("is a table of trials");
    }
    if ("shared".equals(type) && text.isEmpty()) {
      return droppedShares.contains(share)
          ? Optional.of("follows one that goes")
          : Optional.empty();
    }
    return formulas.objection(text);
  }
}
