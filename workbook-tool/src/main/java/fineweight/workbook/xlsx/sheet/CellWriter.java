package fineweight.workbook.xlsx.sheet;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellPlace;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.xml.XmlText;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes one cell as XML. Texts stand in the cell itself and not in the shared list, so that no
 * other part changes and taking them out leaves nothing behind.
 */
public final class CellWriter {
  private static final int LONGEST_TEXT = 32_767;
  private static final int LONGEST_PLAIN = 40;

  private final String sheet;
  private final String open;
  private final String valueOpen;
  private final String valueEnd;
  private final String formulaOpen;
  private final String formulaEnd;
  private final String inlineOpen;
  private final String inlineOpenKept;
  private final String inlineEnd;
  private final String end;
  private final StringBuilder xml = new StringBuilder(256);
  private final List<String> letters = new ArrayList<>();

  /**
   * @param prefix of the main namespace, empty for none
   */
  public CellWriter(String sheet, String prefix) {
    this.sheet = sheet;
    String name = prefix.isEmpty() ? "" : prefix + ":";
    open = "<" + name + "c r=\"";
    end = "</" + name + "c>";
    valueOpen = "<" + name + "v>";
    valueEnd = "</" + name + "v>";
    formulaOpen = "<" + name + "f>";
    formulaEnd = "</" + name + "f>";
    String text = " t=\"inlineStr\"><" + name + "is><" + name + "t";
    inlineOpen = text + ">";
    inlineOpenKept = text + " xml:space=\"preserve\">";
    inlineEnd = "</" + name + "t></" + name + "is>";
  }

  /**
   * @param style 0 for none
   */
  public String cell(int row, int column, int style, CellContent content) throws WorkbookRefusal {
    xml.setLength(0);
    xml.append(open).append(letters(column)).append(row + 1).append('"');
    if (style != 0) {
      xml.append(" s=\"").append(style).append('"');
    }
    if (content instanceof CellContent.Number number) {
      xml.append('>').append(valueOpen).append(plain(number.value())).append(valueEnd);
    } else if (content instanceof CellContent.Text text) {
      inline(checked(text.value(), row, column));
    } else if (content instanceof CellContent.Formula formula) {
      formula(formula, row, column);
    } else {
      return xml.append("/>").toString();
    }
    return xml.append(end).toString();
  }

  private String letters(int column) {
    while (letters.size() <= column) {
      letters.add(CellPlace.letters(letters.size()));
    }
    return letters.get(column);
  }

  private String checked(String text, int row, int column) throws WorkbookRefusal {
    if (text.length() > LONGEST_TEXT) {
      throw new WorkbookRefusal(
          WorkbookRefusal.Kind.NO_ROOM,
          "The text for cell %s is longer than a cell may hold (%d characters)."
              .formatted(new CellPlace(sheet, row, column), LONGEST_TEXT));
    }
    return text;
  }

  private void inline(String text) {
    if (XmlText.isPlain(text)) {
      boolean outerBlanks = text.startsWith(" ") || text.endsWith(" ");
      xml.append(outerBlanks ? inlineOpenKept : inlineOpen).append(text).append(inlineEnd);
      return;
    }
    boolean kept = !text.equals(text.strip()) || text.indexOf('\n') >= 0 || text.indexOf('\t') >= 0;
    xml.append(kept ? inlineOpenKept : inlineOpen);
    xml.append(XmlText.content(XmlText.escapeCell(text))).append(inlineEnd);
  }

  private void formula(CellContent.Formula formula, int row, int column) throws WorkbookRefusal {
    boolean asText = formula.result() == null && formula.text() != null;
    xml.append(asText ? " t=\"str\">" : ">");
    xml.append(formulaOpen).append(XmlText.content(checked(formula.formula(), row, column)));
    xml.append(formulaEnd);
    if (formula.result() != null) {
      xml.append(valueOpen).append(plain(formula.result())).append(valueEnd);
    } else if (asText) {
      String text = checked(formula.text(), row, column);
      xml.append(valueOpen).append(XmlText.content(XmlText.escapeCell(text))).append(valueEnd);
    }
  }

  /** All digits, without exponent unless the number is far too long. */
  public static String plain(BigDecimal number) {
    if (number.signum() == 0) {
      return "0";
    }
    BigDecimal stripped = number.stripTrailingZeros();
    long length = Math.abs((long) stripped.scale()) + stripped.precision();
    return length > LONGEST_PLAIN ? stripped.toString() : stripped.toPlainString();
  }
}
