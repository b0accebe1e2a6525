package fineweight.workbook.xlsx.sheet;

import fineweight.workbook.CellPlace;
import fineweight.workbook.xlsx.part.SharedStrings;
import fineweight.workbook.xlsx.xml.DamageException;
import fineweight.workbook.xlsx.xml.XmlCursor;
import org.codehaus.stax2.XMLStreamReader2;

/** Reads the elements inside a cell: formula, value, text. */
final class CellElements {
  private final String sheet;
  private final XmlCursor cursor;
  private final CellXml cell;
  private final SheetVisitor visitor;
  private final boolean readsFormulas;
  private final boolean places;
  private boolean reads;
  private boolean valued;

  /**
   * @param cell is filled again and again
   */
  CellElements(String sheet, XmlCursor cursor, CellXml cell, SheetVisitor visitor) {
    this.sheet = sheet;
    this.cursor = cursor;
    this.cell = cell;
    this.visitor = visitor;
    readsFormulas = visitor.readsFormulas();
    places = visitor.placesValues();
  }

  /** From the cell's start tag to its end tag. */
  void read() {
    reads = visitor.reads(cell);
    valued = false;
    while (cursor.nextChild()) {
      switch (cursor.name()) {
        case "v" -> value();
        case "f" -> formula();
        case "is" -> inline();
        default -> cursor.skip();
      }
    }
  }

  private void inline() {
    if (reads) {
      cell.inline = SharedStrings.richText(cursor);
    } else {
      cursor.skip();
      cell.inline = null;
    }
  }

  private void value() {
    refuseSecond(valued);
    valued = true;
    if (!places) {
      valueText();
      return;
    }
    cell.valueStart = cursor.start();
    cell.valueEnd = cursor.end();
    boolean empty = cursor.isEmptyElement();
    valueText();
    cell.valueEnd = empty ? cell.valueEnd : cursor.end();
  }

  private void valueText() {
    if (reads) {
      cursor.text(cell.valueSpan());
    } else {
      cell.setValued(cursor.skipText());
    }
  }

  /** Of two values or formulas nobody knows which counts. */
  private void refuseSecond(boolean second) {
    if (second) {
      throw new DamageException(
          "cell "
              + new CellPlace(sheet, cell.row, cell.column)
              + " holds two values or two formulas");
    }
  }

  private void formula() {
    refuseSecond(cell.formula);
    cell.formula = true;
    XMLStreamReader2 reader = cursor.attributes();
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      if (reader.getAttributePrefix(i).isEmpty()) {
        attribute(reader.getAttributeLocalName(i), reader.getAttributeValue(i));
      }
    }
    if (reads || cell.shared >= 0 || readsFormulas) {
      cell.formulaText = cursor.text();
    } else {
      cursor.skip();
    }
  }

  private void attribute(String name, String value) {
    if (name.equals("si")) {
      cell.shared = number(value);
    } else {
      cell.formulaAttribute(name, value);
    }
  }

  private int number(String text) {
    try {
      return Integer.parseInt(text.strip());
    } catch (NumberFormatException e) {
      throw new DamageException(
          "sheet \"%s\" has \"%s\" near row %d where a number must be"
              .formatted(sheet, text, cell.row + 1),
          e);
    }
  }
}
