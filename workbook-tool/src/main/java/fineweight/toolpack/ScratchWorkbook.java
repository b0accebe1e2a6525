package fineweight.toolpack;

import fineweight.workbook.Calculation;
import fineweight.workbook.CellPlace;
import fineweight.workbook.CellValue;
import fineweight.workbook.SheetLayout.Area;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaRenderer;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.SharedFormula;
import org.apache.poi.ss.formula.eval.NotImplementedException;
import org.apache.poi.ss.formula.ptg.Area3DPxg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.Ref3DPxg;
import org.apache.poi.ss.formula.udf.UDFFinder;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellUtil;
import org.apache.poi.ss.util.NumberToTextConverter;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook in memory that holds only what some formulas look at. */
final class ScratchWorkbook {
  /** Stands for a formula whose result cannot be known here. */
  private static final String UNKNOWN = "FINEWEIGHT.NOT.KNOWN.HERE";

  private final XSSFWorkbook workbook;
  private final Calculation calculation;

  private ScratchWorkbook(XSSFWorkbook workbook, Calculation calculation) {
    this.workbook = workbook;
    this.calculation = calculation;
  }

  static Map<CellPlace, CellValue> results(
      Calculation calculation, Set<CellPlace> wanted, UDFFinder functions) {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      workbook.addToolPack(functions);
      workbook.addToolPack(
          name ->
              UNKNOWN.equals(name)
                  ? (given, context) -> {
                    throw new NotImplementedException(UNKNOWN);
                  }
                  : null);
      ScratchWorkbook scratch = new ScratchWorkbook(workbook, calculation);
      scratch.fill();
      return scratch.evaluate(wanted);
    } catch (IOException e) {
      throw new UncheckedIOException("a workbook in memory could not be closed", e);
    }
  }

  private void fill() {
    if (calculation.counts1904()) {
      workbook.getCTWorkbook().addNewWorkbookPr().setDate1904(true);
    }
    calculation.sheets().forEach(workbook::createSheet);
    calculation.names().forEach(this::name);
    calculation.values().forEach(this::value);
    calculation.formulas().forEach(this::formula);
  }

  private void name(Calculation.Name name) {
    try {
      XSSFName made = workbook.createName();
      if (!name.sheet().isEmpty()) {
        made.setSheetIndex(workbook.getSheetIndex(name.sheet()));
      }
      made.setNameName(name.name());
      made.setRefersToFormula(name.refersTo());
    } catch (RuntimeException e) {
      // A name that is built in, broken or of another file: formulas that use it stay unknown.
      return;
    }
  }

  private XSSFCell cell(CellPlace place) {
    Sheet sheet = workbook.getSheet(place.sheet());
    return (XSSFCell) CellUtil.getCell(CellUtil.getRow(place.row(), sheet), place.column());
  }

  private void value(CellPlace place, CellValue value) {
    if (value instanceof CellValue.Number number) {
      cell(place).setCellValue(number.value().doubleValue());
    } else if (value instanceof CellValue.Text text) {
      cell(place).setCellValue(text.value());
    } else if (value instanceof CellValue.Bool bool) {
      cell(place).setCellValue(bool.value());
    } else if (value instanceof CellValue.Error error) {
      cell(place).setCellErrorValue(code(error));
    }
  }

  private static byte code(CellValue.Error error) {
    for (FormulaError each : FormulaError.values()) {
      if (each.getString().equals(error.code()) && FormulaError.isValidCode(each.getCode())) {
        return each.getCode();
      }
    }
    return FormulaError.NA.getCode();
  }

  private void formula(Calculation.Formula formula) {
    try {
      put(formula, FormulaWords.areSure(formula.text()) ? text(formula) : UNKNOWN + "()");
    } catch (RuntimeException e) {
      // A formula that POI does not understand: a table, another file, a newer function.
      put(formula, UNKNOWN + "()");
    }
  }

  private void put(Calculation.Formula formula, String text) {
    CellPlace place = formula.place();
    if (formula.area().isEmpty()) {
      cell(place).setCellFormula(text);
      return;
    }
    Area area = formula.area().get();
    workbook
        .getSheet(place.sheet())
        .setArrayFormula(
            text,
            new CellRangeAddress(
                area.firstRow(), area.lastRow(), area.firstColumn(), area.lastColumn()));
  }

  /** A formula that is shared is moved from the cell that it is written for. */
  private String text(Calculation.Formula formula) {
    CellPlace from = formula.writtenFor();
    CellPlace to = formula.place();
    if (from.equals(to)) {
      return formula.text();
    }
    XSSFEvaluationWorkbook words = XSSFEvaluationWorkbook.create(workbook);
    int sheet = workbook.getSheetIndex(to.sheet());
    Ptg[] tokens = FormulaParser.parse(formula.text(), words, FormulaType.CELL, sheet, from.row());
    for (Ptg token : tokens) {
      if (token instanceof Ref3DPxg || token instanceof Area3DPxg) {
        // Moving would lose the sheet's name.
        throw new NotImplementedException("a shared formula that looks at another sheet");
      }
    }
    Ptg[] moved =
        new SharedFormula(SpreadsheetVersion.EXCEL2007)
            .convertSharedFormulas(tokens, to.row() - from.row(), to.column() - from.column());
    return FormulaRenderer.toFormulaString(words, moved);
  }

  private Map<CellPlace, CellValue> evaluate(Set<CellPlace> wanted) {
    FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
    Map<CellPlace, CellValue> results = new HashMap<>();
    for (CellPlace place : wanted) {
      try {
        CellValue result = result(evaluator, cell(place));
        if (result != null) {
          results.put(place, result);
        }
      } catch (RuntimeException e) {
        // Some function or reference in it, or in what it looks at, is not known here.
        continue;
      }
    }
    return results;
  }

  private static CellValue result(FormulaEvaluator evaluator, Cell cell) {
    org.apache.poi.ss.usermodel.CellValue value = evaluator.evaluate(cell);
    if (value == null) {
      return CellValue.BLANK;
    }
    return switch (value.getCellType()) {
      case NUMERIC ->
          new CellValue.Number(
              new BigDecimal(NumberToTextConverter.toText(value.getNumberValue())));
      case STRING ->
          value.getStringValue().isEmpty()
              ? CellValue.BLANK
              : new CellValue.Text(value.getStringValue());
      case BOOLEAN -> new CellValue.Bool(value.getBooleanValue());
      case ERROR ->
          FormulaError.isValidCode(value.getErrorValue())
              ? new CellValue.Error(FormulaError.forInt(value.getErrorValue()).getString())
              : null;
      default -> CellValue.BLANK;
    };
  }
}
