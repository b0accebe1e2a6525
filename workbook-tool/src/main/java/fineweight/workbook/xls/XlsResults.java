package fineweight.workbook.xls;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellPlace;
import fineweight.workbook.xls.formula.DependentFormulas;
import java.util.List;
import org.apache.poi.hssf.record.RecalcIdRecord;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFFormulaEvaluator;
import org.apache.poi.hssf.usermodel.HSSFRichTextString;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.usermodel.CellValue;

/**
 * Brings the stored results of the owner's formulas up to date that depend on changed cells. What
 * cannot be calculated here keeps its result, and the office is asked to calculate on opening.
 */
final class XlsResults {
  private final HSSFWorkbook workbook;
  private final XlsChanges changes;

  XlsResults(HSSFWorkbook workbook, XlsChanges changes) {
    this.workbook = workbook;
    this.changes = changes;
  }

  void refresh() {
    List<CellPlace> places = changes.cells().stream().map(CellChange::place).toList();
    HSSFFormulaEvaluator evaluator = new HSSFFormulaEvaluator(workbook);
    evaluator.setIgnoreMissingWorkbooks(true);
    for (HSSFCell cell : DependentFormulas.lookingAt(places, workbook)) {
      refresh(cell, evaluator);
    }
  }

  private void refresh(HSSFCell cell, HSSFFormulaEvaluator evaluator) {
    CellValue result;
    try {
      result = evaluator.evaluate(cell);
    } catch (RuntimeException e) {
      // A function that POI does not know, a reference to another file, and the like.
      calculateOnOpening();
      return;
    }
    if (!shown(result).equals(XlsCells.result(cell))) {
      String before = XlsCells.result(cell);
      store(result, cell);
      changes.cell(
          new CellPlace(cell.getSheet().getSheetName(), cell.getRowIndex(), cell.getColumnIndex()),
          before,
          XlsCells.result(cell));
    }
  }

  /** An engine of number 0 is older than any, and its results are not believed. */
  private void calculateOnOpening() {
    RecalcIdRecord engine = workbook.getInternalWorkbook().getRecalcId();
    if (engine.getEngineId() != 0) {
      engine.setEngineId(0);
      changes.other();
    }
  }

  private static String shown(CellValue result) {
    return switch (result.getCellType()) {
      case NUMERIC -> XlsCells.decimal(result.getNumberValue()).toPlainString();
      case STRING -> result.getStringValue();
      case BOOLEAN -> result.getBooleanValue() ? "TRUE" : "FALSE";
      default -> ErrorEval.getText(result.getErrorValue());
    };
  }

  private static void store(CellValue result, HSSFCell cell) {
    switch (result.getCellType()) {
      case NUMERIC -> cell.setCellValue(result.getNumberValue());
      case STRING -> cell.setCellValue(new HSSFRichTextString(result.getStringValue()));
      case BOOLEAN -> cell.setCellValue(result.getBooleanValue());
      default -> cell.setCellErrorValue(result.getErrorValue());
    }
  }
}
