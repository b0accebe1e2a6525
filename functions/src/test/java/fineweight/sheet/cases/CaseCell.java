package fineweight.sheet.cases;

import fineweight.sheet.function.Argument;
import java.math.BigDecimal;

/**
 * One cell that a case hands over.
 *
 * @param kind what is in it
 * @param text a text without its quotes, or a number in plain notation
 */
public record CaseCell(Kind kind, String text) {
  /** What is in a cell. */
  public enum Kind {
    LEFT_OUT,
    BLANK,
    NUMBER,
    TEXT
  }

  /** The argument as a spreadsheet hands it over: a single blank cell counts as zero. */
  Argument single() {
    return kind == Kind.BLANK ? new Argument.Number(BigDecimal.ZERO) : within();
  }

  /** The argument within an area. */
  Argument within() {
    return switch (kind) {
      case LEFT_OUT, BLANK -> new Argument.Blank();
      case NUMBER -> new Argument.Number(new BigDecimal(text));
      case TEXT -> new Argument.Text(text);
    };
  }
}
