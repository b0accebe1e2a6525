package fineweight.workbook.xlsx.sheet;

import fineweight.workbook.CellPlace;
import fineweight.workbook.CellValue;
import fineweight.workbook.xlsx.part.SharedStrings;
import fineweight.workbook.xlsx.style.Styles;
import fineweight.workbook.xlsx.xml.DamageException;
import fineweight.workbook.xlsx.xml.XmlText;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;

/**
 * Gives cells their meaning.
 *
 * @param counts1904 whether the workbook counts days from 1904
 */
public record CellReading(Styles styles, SharedStrings strings, boolean counts1904) {
  private static final int LONGEST_NUMBER = 400;
  private static final BigDecimal LAST_DAY = BigDecimal.valueOf(2_958_466);
  private static final BigDecimal SECONDS = BigDecimal.valueOf(86_400);

  /** What the cell shows; for a formula the stored result. */
  CellValue value(String sheet, CellXml cell) {
    return switch (cell.type) {
      case "inlineStr" -> text(cell.inline == null ? cell.value() : cell.inline);
      case "s" -> cell.hasValue() ? text(strings.get(index(sheet, cell))) : CellValue.BLANK;
      case "str" -> text(cell.value() == null ? "" : XmlText.unescapeCell(cell.value()));
      case "b" -> cell.hasValue() ? new CellValue.Bool(isTrue(cell.value())) : CellValue.BLANK;
      case "e" -> cell.hasValue() ? new CellValue.Error(cell.value()) : CellValue.BLANK;
      case "d" -> cell.hasValue() ? isoDate(cell) : CellValue.BLANK;
      case "n" -> cell.hasValue() ? number(sheet, cell) : CellValue.BLANK;
      default ->
          throw new DamageException(
              "cell " + place(sheet, cell) + " is of the unknown type " + cell.type);
    };
  }

  private static CellPlace place(String sheet, CellXml cell) {
    return new CellPlace(sheet, cell.row, cell.column);
  }

  private static boolean isTrue(String value) {
    return value.strip().equals("1") || value.strip().equalsIgnoreCase("true");
  }

  private static CellValue text(String text) {
    return text == null || text.isEmpty() ? CellValue.BLANK : new CellValue.Text(text);
  }

  /** Refuses an index that is no number or points to nothing, without building the text. */
  void check(String sheet, CellXml cell) {
    styles.check(cell.style);
    if (cell.type.equals("s") && cell.hasValue()) {
      int index = index(sheet, cell);
      if (index < 0 || index >= strings.count()) {
        throw new DamageException(
            "cell " + place(sheet, cell) + " points to text " + index + ", which is not there");
      }
    }
  }

  private static int index(String sheet, CellXml cell) {
    int plain = cell.number();
    if (plain >= 0) {
      return plain;
    }
    try {
      return Integer.parseInt(cell.value().strip());
    } catch (NumberFormatException e) {
      throw new DamageException(
          "cell " + place(sheet, cell) + " points to a text by \"" + cell.value() + "\"", e);
    }
  }

  private CellValue number(String sheet, CellXml cell) {
    BigDecimal number = decimal(cell);
    if (number == null) {
      throw new DamageException(
          "cell " + place(sheet, cell) + " holds the number \"" + shortened(cell.value()) + "\"");
    }
    boolean dated =
        styles.isDate(cell.style) && number.signum() >= 0 && number.compareTo(LAST_DAY) < 0;
    return dated
        ? new CellValue.Date(day(number), styles.isYearOnly(cell.style))
        : new CellValue.Number(number);
  }

  private static String shortened(String text) {
    return text.length() > 40 ? text.substring(0, 40) + "..." : text;
  }

  /** Null if it is none, or one that no office could have written. */
  static BigDecimal decimal(CellXml cell) {
    BigDecimal plain = cell.decimal();
    if (plain != null) {
      return plausible(plain);
    }
    String stripped = cell.value().strip();
    if (stripped.length() > LONGEST_NUMBER) {
      return null;
    }
    try {
      return plausible(new BigDecimal(stripped));
    } catch (NumberFormatException e) {
      return null;
    }
  }

  private static BigDecimal plausible(BigDecimal number) {
    long size = (long) number.precision() - number.scale();
    boolean plausible = Math.abs(size) <= LONGEST_NUMBER && number.scale() <= 2 * LONGEST_NUMBER;
    return plausible ? number : null;
  }

  /** The calendar of 1900 counts a 29 February that never was: day 60. */
  private LocalDateTime day(BigDecimal serial) {
    long day = serial.longValue();
    LocalDate first =
        counts1904
            ? LocalDate.of(1904, 1, 1)
            : day < 60 ? LocalDate.of(1899, 12, 31) : LocalDate.of(1899, 12, 30);
    BigDecimal rest = serial.subtract(BigDecimal.valueOf(day)).multiply(SECONDS);
    long seconds = rest.setScale(0, java.math.RoundingMode.HALF_UP).longValue();
    return first.plusDays(day).atStartOfDay().plusSeconds(seconds);
  }

  private CellValue isoDate(CellXml cell) {
    String text = cell.value().strip();
    String plain = text.endsWith("Z") ? text.substring(0, text.length() - 1) : text;
    try {
      LocalDateTime date =
          plain.contains("T") ? LocalDateTime.parse(plain) : LocalDate.parse(plain).atStartOfDay();
      return new CellValue.Date(date, styles.isYearOnly(cell.style));
    } catch (DateTimeException e) {
      return text(text);
    }
  }
}
