package fineweight.toolpack;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.sheet.cases.CaseFormula;
import fineweight.sheet.cases.CaseFormula.Filled;
import fineweight.sheet.cases.CaseFormula.Style;
import fineweight.sheet.cases.CaseFormula.Syntax;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellUtil;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetFunctionPackTest {
  @ParameterizedTest
  @CsvSource({"xlsx,TYPED", "xlsx,IN_CELLS", "xls,TYPED", "xls,IN_CELLS"})
  void everyCaseComesOutAsTheTableSaysAfterSavingAndOpening(String kind, Style style)
      throws IOException {
    List<CaseFormula> cases = CaseFormula.all(style, Syntax.COMMAS);
    byte[] saved = saved(kind, cases);
    List<String> wrong = new ArrayList<>();
    try (Workbook workbook = WorkbookFactory.create(new ByteArrayInputStream(saved))) {
      SheetFunctionPack.giveTo(workbook);
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      for (CaseFormula one : cases) {
        check(workbook.getSheetAt(0), evaluator, one, wrong);
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void anErrorThatIsHandedOverIsTheAnswer() throws IOException {
    try (Workbook workbook = new XSSFWorkbook()) {
      SheetFunctionPack.giveTo(workbook);
      Sheet sheet = workbook.createSheet();
      Cell divided = CellUtil.getCell(CellUtil.getRow(0, sheet), 1);
      divided.setCellFormula("1/0");
      Cell cell = CellUtil.getCell(CellUtil.getRow(0, sheet), 0);
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      for (String arguments : List.of("B1,30", "\"1964 dime\",B1:C2")) {
        cell.setCellFormula("FINEWEIGHT.MELT(" + arguments + ")");
        evaluator.clearAllCachedResultValues();
        assertThat(evaluator.evaluate(cell).getErrorValue()).isEqualTo(FormulaError.DIV0.getCode());
      }
    }
  }

  @Test
  void anAnswerCanBePartOfALargerFormulaAndOfASum() throws IOException {
    try (Workbook workbook = new XSSFWorkbook()) {
      SheetFunctionPack.giveTo(workbook);
      Row row = workbook.createSheet().createRow(0);
      row.createCell(1).setCellValue("1904 double eagle");
      Cell cell = row.createCell(0);
      cell.setCellFormula(
          "SUM(fineweight.FineOunces(B1,\"gold\"),FINEWEIGHT.FINEOUNCESLIST(B1:B1,\"gold\"))*2");
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      // Twice two double eagles of 464.4 in 480 grains: Coinage Act of 1873, section 14.
      assertThat(evaluator.evaluate(cell).getNumberValue()).isEqualTo(3.87);
    }
  }

  private static byte[] saved(String kind, List<CaseFormula> cases) throws IOException {
    try (Workbook workbook = kind.equals("xls") ? new HSSFWorkbook() : new XSSFWorkbook();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      SheetFunctionPack.giveTo(workbook);
      Sheet sheet = workbook.createSheet("cases");
      cases.forEach(one -> write(sheet, one));
      workbook.write(out);
      return out.toByteArray();
    }
  }

  private static void write(Sheet sheet, CaseFormula one) {
    for (Filled filled : one.filled()) {
      Cell cell = CellUtil.getCell(CellUtil.getRow(filled.row(), sheet), filled.column());
      switch (filled.cell().kind()) {
        case NUMBER -> cell.setCellValue(Double.parseDouble(filled.cell().text()));
        default -> cell.setCellValue(filled.cell().text());
      }
    }
    int height = one.one().expected().cells().size();
    if (one.one().expected().column()) {
      sheet.setArrayFormula(
          one.formula(), new CellRangeAddress(one.row(), one.row() + height - 1, 0, 0));
    } else {
      CellUtil.getCell(CellUtil.getRow(one.row(), sheet), 0).setCellFormula(one.formula());
    }
  }

  private static void check(
      Sheet sheet, FormulaEvaluator evaluator, CaseFormula one, List<String> wrong) {
    for (int down = 0; down < one.one().expected().cells().size(); down++) {
      String shown = shown(evaluator.evaluate(sheet.getRow(one.row() + down).getCell(0)));
      if (!one.one().expected().fits(down, shown)) {
        wrong.add(one.one() + " as =" + one.formula() + " came to " + shown);
      }
    }
  }

  private static String shown(CellValue value) {
    return switch (value.getCellType()) {
      case NUMERIC -> new java.math.BigDecimal(value.getNumberValue()).toPlainString();
      case STRING -> value.getStringValue();
      case ERROR -> FormulaError.forInt(value.getErrorValue()).getString();
      default -> value.formatAsString();
    };
  }
}
