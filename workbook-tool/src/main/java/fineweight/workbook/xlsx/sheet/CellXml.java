package fineweight.workbook.xlsx.sheet;

import fineweight.workbook.xlsx.xml.CharSpan;
import java.math.BigDecimal;

/** A cell as its part writes it. One instance is filled again and again while walking. */
public final class CellXml {
  /** No office writes more characters into a number, unless it has an exponent. */
  private static final int PLAIN = 24;

  int row;
  int column;
  boolean referenced;
  String type;
  int style;
  long start;
  long tagEnd;
  long end;
  boolean empty;
  private final CharSpan span = new CharSpan();
  private boolean spanned;
  private String value;
  private boolean valued;
  long valueStart;
  long valueEnd;
  String inline;
  boolean formula;
  String formulaText;
  String formulaKind;
  String formulaArea;
  int shared;
  String firstInput;
  String secondInput;

  void begin(int row, int column) {
    this.row = row;
    this.column = column;
    type = "n";
    style = 0;
    value = null;
    valued = false;
    spanned = false;
    valueStart = -1;
    inline = null;
    formula = false;
    formulaText = "";
    formulaKind = "normal";
    formulaArea = null;
    shared = -1;
    firstInput = null;
    secondInput = null;
  }

  /** The kind of a cell as one of the known words; null for all else. */
  static String type(CharSpan word) {
    if (word.length() == 1) {
      return switch (word.at(0)) {
        case 's' -> "s";
        case 'n' -> "n";
        case 'b' -> "b";
        case 'e' -> "e";
        case 'd' -> "d";
        default -> null;
      };
    }
    return word.is("inlineStr") ? "inlineStr" : word.is("str") ? "str" : null;
  }

  /** The characters that stand in its value; to be filled before it is asked for. */
  CharSpan valueSpan() {
    spanned = true;
    valued = true;
    return span;
  }

  void setValue(String text) {
    value = text;
    valued = true;
  }

  /** Something stands in it or not; nobody wants to know what. */
  void setValued(boolean any) {
    valued = any;
  }

  /** The text of its value; null if there is none or nobody wanted it. */
  String value() {
    if (value == null && spanned) {
      value = span.toString();
    }
    return value;
  }

  /** As a whole number; -1 if it is not plainly one. */
  int number() {
    return spanned ? span.number() : -1;
  }

  /** Null if that is not plain, and the text has to be looked at. */
  BigDecimal decimal() {
    if (!spanned || span.length() > PLAIN) {
      return null;
    }
    try {
      return span.decimal();
    } catch (NumberFormatException e) {
      return null;
    }
  }

  /** An attribute of its formula; of others than these nothing is ours. */
  void formulaAttribute(String name, String text) {
    switch (name) {
      case "ref" -> formulaArea = text;
      case "r1" -> firstInput = text;
      case "r2" -> secondInput = text;
      case "t" -> formulaKind = text;
      default -> {}
    }
  }

  public int row() {
    return row;
  }

  public int column() {
    return column;
  }

  /** Whether the cell says itself where it stands. */
  public boolean referenced() {
    return referenced;
  }

  /** The number of its format. */
  public int style() {
    return style;
  }

  /** Where its start tag begins. */
  public long start() {
    return start;
  }

  /** Behind its start tag. */
  public long tagEnd() {
    return tagEnd;
  }

  /** Behind its end tag. */
  public long end() {
    return end;
  }

  /** Where its value element begins; -1 if it has none. */
  public long valueStart() {
    return valueStart;
  }

  /** Behind its value element. */
  public long valueEnd() {
    return valueEnd;
  }

  public boolean isFormula() {
    return formula;
  }

  /** Whether a result or value is stored. */
  public boolean hasValue() {
    return spanned ? span.length() > 0 : value == null ? valued : !value.isEmpty();
  }

  /** Empty for a member of a shared formula. */
  public String formulaText() {
    return formulaText;
  }

  /** {@code normal}, {@code shared}, {@code array} or {@code dataTable}. */
  public String formulaKind() {
    return formulaKind;
  }

  /** The area of a shared, array or table formula; null for none. */
  public String formulaArea() {
    return formulaArea;
  }

  /** The group of a shared formula; -1 for none. */
  public int sharedGroup() {
    return shared;
  }

  /** The input cell of a data table; null for none. */
  public String firstInput() {
    return firstInput;
  }

  /** The second input cell of a data table; null for none. */
  public String secondInput() {
    return secondInput;
  }

  /** Whether nothing is in it but perhaps a format. */
  public boolean isBlank() {
    return !formula && !hasValue() && (inline == null || inline.isEmpty());
  }
}
