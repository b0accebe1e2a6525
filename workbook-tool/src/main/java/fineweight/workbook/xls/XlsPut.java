package fineweight.workbook.xls;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellPlace;
import java.util.function.Supplier;
import org.apache.poi.hssf.model.HSSFFormulaParser;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFRichTextString;
import org.apache.poi.hssf.usermodel.HSSFRow;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.usermodel.CellType;

/** Puts contents into cells, and leaves a cell alone that holds the content already. */
final class XlsPut {
  private final HSSFWorkbook workbook;
  private final XlsChanges changes;

  XlsPut(HSSFWorkbook workbook, XlsChanges changes) {
    this.workbook = workbook;
    this.changes = changes;
  }

  /**
   * @param style for a cell that is not there yet; one that is keeps its own
   */
  void put(
      HSSFSheet sheet, int row, int column, CellContent content, Supplier<HSSFCellStyle> style) {
    HSSFCell cell = XlsCells.cell(sheet, row, column);
    CellContent wanted = normal(content, sheet);
    if (holds(cell, wanted)) {
      return;
    }
    String before = XlsCells.shown(cell);
    String resultBefore = XlsCells.result(cell);
    if (cell == null) {
      HSSFRow found = sheet.getRow(row);
      cell = (found == null ? sheet.createRow(row) : found).createCell(column);
      cell.setCellStyle(style.get());
    }
    set(cell, wanted);
    CellPlace place = new CellPlace(sheet.getSheetName(), row, column);
    String after = XlsCells.shown(cell);
    boolean onlyResult = before.equals(after);
    changes.cell(
        place, onlyResult ? resultBefore : before, onlyResult ? XlsCells.result(cell) : after);
  }

  /** Takes a cell away with its format. */
  void remove(HSSFSheet sheet, int row, int column) {
    HSSFCell cell = XlsCells.cell(sheet, row, column);
    if (cell != null) {
      changes.cell(new CellPlace(sheet.getSheetName(), row, column), XlsCells.shown(cell), "");
      changes.other();
      cell.removeHyperlink();
      cell.getRow().removeCell(cell);
    }
  }

  private CellContent normal(CellContent content, HSSFSheet sheet) {
    if (content instanceof CellContent.Text text && text.value().isEmpty()) {
      return CellContent.EMPTY;
    }
    if (content instanceof CellContent.Formula formula) {
      return new CellContent.Formula(
          normal(formula.formula(), sheet), formula.result(), formula.text());
    }
    return content;
  }

  /** As POI gives it back, so that two runs compare alike. */
  private String normal(String formula, HSSFSheet sheet) {
    return HSSFFormulaParser.toFormulaString(
        workbook,
        HSSFFormulaParser.parse(
            formula, workbook, FormulaType.CELL, workbook.getSheetIndex(sheet)));
  }

  static boolean holds(HSSFCell cell, CellContent content) {
    CellType type = cell == null ? CellType.BLANK : cell.getCellType();
    if (content instanceof CellContent.Text text) {
      return type == CellType.STRING
          && cell.getRichStringCellValue().getString().equals(text.value());
    }
    if (content instanceof CellContent.Number number) {
      return type == CellType.NUMERIC && cell.getNumericCellValue() == number.value().doubleValue();
    }
    if (content instanceof CellContent.Formula formula) {
      return type == CellType.FORMULA
          && cell.getCellFormula().equals(formula.formula())
          && holdsResult(cell, formula);
    }
    return type == CellType.BLANK;
  }

  private static boolean holdsResult(HSSFCell cell, CellContent.Formula formula) {
    CellType type = cell.getCachedFormulaResultType();
    if (formula.result() != null) {
      return type == CellType.NUMERIC
          && cell.getNumericCellValue() == formula.result().doubleValue();
    }
    String text = formula.text() == null ? "" : formula.text();
    return type == CellType.STRING && cell.getRichStringCellValue().getString().equals(text);
  }

  private static void set(HSSFCell cell, CellContent content) {
    if (content instanceof CellContent.Text text) {
      cell.setCellValue(new HSSFRichTextString(text.value()));
    } else if (content instanceof CellContent.Number number) {
      cell.setCellValue(number.value().doubleValue());
    } else if (content instanceof CellContent.Formula formula) {
      setFormula(cell, formula);
    } else {
      cell.setBlank();
    }
  }

  private static void setFormula(HSSFCell cell, CellContent.Formula formula) {
    // A formula set over a text would keep the text as its result.
    cell.setBlank();
    cell.setCellFormula(formula.formula());
    if (formula.result() != null) {
      cell.setCellValue(formula.result().doubleValue());
    } else {
      cell.setCellValue(new HSSFRichTextString(formula.text() == null ? "" : formula.text()));
    }
  }
}
