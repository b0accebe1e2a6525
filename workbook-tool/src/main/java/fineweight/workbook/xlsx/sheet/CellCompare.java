package fineweight.workbook.xlsx.sheet;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellValue;
import java.math.BigDecimal;
import java.math.MathContext;

/** Tells whether a cell already is what it shall be, and says both in words. */
public final class CellCompare {
  /** Offices keep this many digits; beyond them two numbers are the same to the owner. */
  private static final MathContext OFFICE = new MathContext(15);

  private final CellReading reading;
  private final String sheet;

  public CellCompare(String sheet, CellReading reading) {
    this.sheet = sheet;
    this.reading = reading;
  }

  /** Whether content and kind are the same; the format does not count. */
  public boolean same(CellXml cell, CellContent wanted) {
    if (wanted instanceof CellContent.Formula formula) {
      return cell.formula
          && cell.formulaKind.equals("normal")
          && cell.formulaText.equals(formula.formula())
          && sameResult(cell, formula);
    }
    if (cell.formula) {
      return false;
    }
    if (wanted instanceof CellContent.Number number) {
      BigDecimal stored = cell.type.equals("n") && cell.hasValue() ? stored(cell) : null;
      if (stored != null) {
        return sameNumber(stored, number.value());
      }
    }
    // Refuses what is no value at all.
    CellValue value = reading.value(sheet, cell);
    if (wanted instanceof CellContent.Text text) {
      return value instanceof CellValue.Text stored && stored.value().equals(text.value());
    }
    return wanted instanceof CellContent.Empty && value == CellValue.BLANK;
  }

  private static BigDecimal stored(CellXml cell) {
    return CellReading.decimal(cell);
  }

  private boolean sameResult(CellXml cell, CellContent.Formula formula) {
    if (formula.result() != null) {
      BigDecimal stored = cell.type.equals("n") && cell.hasValue() ? stored(cell) : null;
      return stored != null && sameNumber(stored, formula.result());
    }
    String wanted = formula.text() == null ? "" : formula.text();
    return reading.value(sheet, cell) instanceof CellValue.Text text
        ? text.value().equals(wanted)
        : wanted.isEmpty() && reading.value(sheet, cell) == CellValue.BLANK;
  }

  private static boolean sameNumber(BigDecimal one, BigDecimal other) {
    return one.compareTo(other) == 0 || one.round(OFFICE).compareTo(other.round(OFFICE)) == 0;
  }

  /** The cell as it shows itself; a formula begins with {@code =}, its result in brackets. */
  public String words(CellXml cell) {
    String value = words(reading.value(sheet, cell));
    if (!cell.formula) {
      return value;
    }
    return formulaWords(cell.formulaText, value);
  }

  /** The same with another result. */
  public String words(CellXml cell, CellValue result) {
    return cell.formula ? formulaWords(cell.formulaText, words(result)) : words(result);
  }

  /** Whether two results are the same to an owner. */
  public static boolean same(CellValue one, CellValue other) {
    return one instanceof CellValue.Number first && other instanceof CellValue.Number second
        ? sameNumber(first.value(), second.value())
        : one.equals(other);
  }

  private static String formulaWords(String formula, String value) {
    return value.isEmpty() ? "=" + formula : "=" + formula + " (" + value + ")";
  }

  private static String words(CellValue value) {
    if (value instanceof CellValue.Text text) {
      return text.value();
    }
    if (value instanceof CellValue.Number number) {
      return CellWriter.plain(number.value());
    }
    if (value instanceof CellValue.Date date) {
      return date.value().toString();
    }
    if (value instanceof CellValue.Bool bool) {
      return bool.value() ? "TRUE" : "FALSE";
    }
    return value instanceof CellValue.Error error ? error.code() : "";
  }

  /** What a cell with that content will show. */
  public static String words(CellContent content) {
    if (content instanceof CellContent.Text text) {
      return text.value();
    }
    if (content instanceof CellContent.Number number) {
      return CellWriter.plain(number.value());
    }
    if (content instanceof CellContent.Formula formula) {
      String result =
          formula.result() != null
              ? CellWriter.plain(formula.result())
              : formula.text() == null ? "" : formula.text();
      return formulaWords(formula.formula(), result);
    }
    return "";
  }
}
