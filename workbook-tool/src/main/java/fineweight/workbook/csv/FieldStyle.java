package fineweight.workbook.csv;

import fineweight.workbook.CellContent;
import java.math.BigDecimal;

/** How we write a field of our own in a file's manner. */
final class FieldStyle {
  /** What an office may take for the beginning of a formula. */
  private static final String BEGINS_A_FORMULA = "=+-@\t\r\n";

  private final Dialect dialect;

  FieldStyle(Dialect dialect) {
    this.dialect = dialect;
  }

  /** What the field will mean: for a formula its stored result. */
  String text(CellContent content) {
    if (content instanceof CellContent.Number number) {
      return number(number.value());
    }
    if (content instanceof CellContent.Text text) {
      return harmless(text.value());
    }
    if (content instanceof CellContent.Day day) {
      return day.value().toString();
    }
    if (content instanceof CellContent.Formula formula) {
      return formula.result() != null
          ? number(formula.result())
          : harmless(formula.text() == null ? "" : formula.text());
    }
    return "";
  }

  /** A text of ours that no office takes for a formula. */
  String harmless(String text) {
    String writable = dialect.encoding().writable(text);
    boolean dangerous = !writable.isEmpty() && BEGINS_A_FORMULA.indexOf(writable.charAt(0)) >= 0;
    return dangerous ? "'" + writable : writable;
  }

  private String number(BigDecimal value) {
    return value.toPlainString().replace('.', dialect.decimalSign());
  }

  /**
   * @param allQuoted whether the line's other fields all stand in quotation marks
   */
  Field field(String text, boolean allQuoted) {
    return allQuoted || mustBeQuoted(text) ? Field.quoted(text) : Field.plain(text);
  }

  private boolean mustBeQuoted(String text) {
    return text.indexOf(dialect.delimiter()) >= 0
        || text.indexOf(Field.QUOTE) >= 0
        || text.indexOf('\n') >= 0
        || text.indexOf('\r') >= 0
        || !text.equals(text.strip());
  }
}
