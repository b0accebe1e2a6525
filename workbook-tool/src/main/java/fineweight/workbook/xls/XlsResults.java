package fineweight.workbook.xls;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellPlace;
import fineweight.workbook.Recalculation;
import fineweight.workbook.xls.formula.DependentFormulas;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.poi.hssf.record.RecalcIdRecord;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFFormulaEvaluator;
import org.apache.poi.hssf.usermodel.HSSFRichTextString;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;

/**
 * Brings the stored results of the owner's formulas up to date that depend on changed cells. What
 * cannot be calculated here keeps its result, and the office is asked to calculate on opening.
 */
final class XlsResults {
  private final HSSFWorkbook workbook;
  private final XlsChanges changes;
  private final Recalculation recalculation;

  XlsResults(HSSFWorkbook workbook, XlsChanges changes, Recalculation recalculation) {
    this.workbook = workbook;
    this.changes = changes;
    this.recalculation = recalculation;
  }

  void refresh() {
    Set<CellPlace> called = refreshCalled();
    List<CellPlace> places = changes.cells().stream().map(CellChange::place).toList();
    HSSFFormulaEvaluator evaluator = new HSSFFormulaEvaluator(workbook);
    evaluator.setIgnoreMissingWorkbooks(true);
    for (HSSFCell cell : DependentFormulas.lookingAt(places, workbook)) {
      if (!called.contains(place(cell))) {
        refresh(cell, evaluator);
      }
    }
  }

  /** Formulas that call functions which are calculated here; what cannot be stays as it is. */
  private Set<CellPlace> refreshCalled() {
    Set<CellPlace> called = new HashSet<>();
    HSSFFormulaEvaluator evaluator = new HSSFFormulaEvaluator(workbook);
    for (Sheet sheet : workbook) {
      for (Row row : sheet) {
        for (Cell each : row) {
          HSSFCell cell = (HSSFCell) each;
          if (calls(cell)) {
            called.add(place(cell));
            refreshCalled(cell, evaluator);
          }
        }
      }
    }
    return called;
  }

  private boolean calls(HSSFCell cell) {
    try {
      return XlsCells.isFormula(cell) && recalculation.calculator().concerns(cell.getCellFormula());
    } catch (RuntimeException e) {
      // A formula that POI cannot put into words calls nothing that we know.
      return false;
    }
  }

  private void refreshCalled(HSSFCell cell, HSSFFormulaEvaluator evaluator) {
    CellValue result = null;
    if (recalculation.calculator().isSure(cell.getCellFormula())) {
      try {
        result = evaluator.evaluate(cell);
      } catch (RuntimeException e) {
        // Another function in it that POI does not know: said below.
        result = null;
      }
    }
    boolean known =
        result != null
            && (result.getCellType() != CellType.ERROR
                || FormulaError.isValidCode(result.getErrorValue()));
    if (known) {
      put(result, cell);
    } else {
      recalculation.left().accept(place(cell));
    }
  }

  private static CellPlace place(HSSFCell cell) {
    return new CellPlace(cell.getSheet().getSheetName(), cell.getRowIndex(), cell.getColumnIndex());
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
    put(result, cell);
  }

  private void put(CellValue result, HSSFCell cell) {
    if (!shown(result).equals(XlsCells.result(cell))) {
      String before = XlsCells.result(cell);
      store(result, cell);
      changes.cell(place(cell), before, XlsCells.result(cell));
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
