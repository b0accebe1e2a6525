package fineweight.workbook.xlsx.sheet;

/** A cell as its part writes it. One instance is filled again and again while walking. */
public final class CellXml {
  int row;
  int column;
  boolean referenced;
  String type;
  int style;
  long start;
  long tagEnd;
  long end;
  boolean empty;
  String value;
  boolean valued;
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
    return value == null ? valued : !value.isEmpty();
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
