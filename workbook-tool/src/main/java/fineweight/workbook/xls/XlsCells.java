package fineweight.workbook.xls;

import fineweight.workbook.CellValue;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFRow;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.NumberToTextConverter;

/** What cells hold, in our words. */
final class XlsCells {
  private static final Pattern NOT_SHOWN_AS_DATE =
      Pattern.compile("\\[[^]]*]|\"[^\"]*\"|\\\\.|_.|;.*");
  private static final Pattern YEAR = Pattern.compile("y+");

  private XlsCells() {}

  /** The cell, or null if there is none. */
  static HSSFCell cell(HSSFSheet sheet, int row, int column) {
    HSSFRow found = sheet.getRow(row);
    return found == null ? null : found.getCell(column);
  }

  static boolean isFormula(HSSFCell cell) {
    return cell != null && cell.getCellType() == CellType.FORMULA;
  }

  static Optional<String> formula(HSSFCell cell) {
    return isFormula(cell) ? Optional.of(cell.getCellFormula()) : Optional.empty();
  }

  /**
   * @param from1904 whether the workbook counts its days from 1904
   */
  static CellValue value(HSSFCell cell, boolean from1904) {
    return switch (resultType(cell)) {
      case NUMERIC -> number(cell, from1904);
      case STRING -> {
        String text = cell.getRichStringCellValue().getString();
        yield text.isEmpty() ? CellValue.BLANK : new CellValue.Text(text);
      }
      case BOOLEAN -> new CellValue.Bool(cell.getBooleanCellValue());
      case ERROR -> new CellValue.Error(errorCode(cell.getErrorCellValue()));
      default -> CellValue.BLANK;
    };
  }

  private static CellType resultType(HSSFCell cell) {
    if (cell == null) {
      return CellType.BLANK;
    }
    return isFormula(cell) ? cell.getCachedFormulaResultType() : cell.getCellType();
  }

  private static CellValue number(HSSFCell cell, boolean from1904) {
    double number = cell.getNumericCellValue();
    if (!Double.isFinite(number)) {
      return new CellValue.Error(FormulaError.NUM.getString());
    }
    HSSFCellStyle style = cell.getCellStyle();
    String format = style.getDataFormatString();
    if (DateUtil.isADateFormat(style.getDataFormat(), format)
        && DateUtil.isValidExcelDate(number)) {
      return new CellValue.Date(DateUtil.getLocalDateTime(number, from1904), showsYearOnly(format));
    }
    return new CellValue.Number(decimal(number));
  }

  /** The fifteen digits that the office shows and keeps, so that 0.1 is 0.1. */
  static BigDecimal decimal(double number) {
    return new BigDecimal(NumberToTextConverter.toText(number));
  }

  static boolean showsYearOnly(String format) {
    String shown =
        NOT_SHOWN_AS_DATE.matcher(format.toLowerCase(Locale.ROOT)).replaceAll("").strip();
    return YEAR.matcher(shown).matches();
  }

  /** As the cell shows itself in a list of changes: a formula begins with an equals sign. */
  static String shown(HSSFCell cell) {
    return isFormula(cell) ? "=" + cell.getCellFormula() : result(cell);
  }

  /** The content, or a formula's stored result, as text. */
  static String result(HSSFCell cell) {
    return switch (resultType(cell)) {
      case NUMERIC -> number(cell.getNumericCellValue());
      case STRING -> cell.getRichStringCellValue().getString();
      case BOOLEAN -> cell.getBooleanCellValue() ? "TRUE" : "FALSE";
      case ERROR -> errorCode(cell.getErrorCellValue());
      default -> "";
    };
  }

  private static String number(double number) {
    return Double.isFinite(number) ? decimal(number).toPlainString() : FormulaError.NUM.getString();
  }

  static String errorCode(byte code) {
    return FormulaError.isValidCode(code) ? FormulaError.forInt(code).getString() : "#N/A";
  }
}
