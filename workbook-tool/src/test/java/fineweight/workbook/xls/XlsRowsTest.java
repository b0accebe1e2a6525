package fineweight.workbook.xls;

import static fineweight.workbook.xls.XlsFiles.changes;
import static fineweight.workbook.xls.XlsFiles.open;
import static fineweight.workbook.xls.XlsFiles.poi;
import static fineweight.workbook.xls.XlsFiles.row;
import static fineweight.workbook.xls.XlsFiles.table;
import static fineweight.workbook.xls.XlsFiles.write;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.workbook.CellContent;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.WorkbookEdit;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows put under a list of Excel 97-2003, read back by POI alone. */
class XlsRowsTest {
  @TempDir Path folder;

  private Path book(Object[]... more) throws Exception {
    HSSFWorkbook workbook = new HSSFWorkbook();
    HSSFSheet coins =
        table(workbook, "Coins", row("Year", "Coin", "Bought"), row(1964, "half", 40000));
    HSSFCellStyle day = workbook.createCellStyle();
    day.setDataFormat((short) 14);
    coins.getRow(1).getCell(2).setCellStyle(day);
    coins.createRow(9).createCell(5).setCellFormula("SUM(A2:A5)");
    for (int i = 0; i < more.length; i++) {
      coins.createRow(2 + i).createCell(1).setCellValue(more[i][0].toString());
    }
    workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
    return write(workbook, folder.resolve("coins.xls"));
  }

  private static WorkbookEdit edit() {
    return WorkbookEdit.of(
        new RowsEdit(
            "Coins",
            1,
            0,
            2,
            List.of(
                Map.of(
                    0,
                    new CellContent.Number(BigDecimal.valueOf(1921)),
                    1,
                    new CellContent.Text("=dollar")),
                Map.of(2, new CellContent.Day(LocalDate.of(2026, 11, 2)))),
            new TreeMap<>()));
  }

  @Test
  void standsUnderTheListAndLooksLikeItsLastRow() throws Exception {
    Path file = book();
    assertThat(changes(file, edit()).stream().map(each -> each.place() + " " + each.after()))
        .containsExactly("Coins!A3 1921", "Coins!B3 =dollar", "Coins!C4 46328", "Coins!F10 3885");
    try (XlsWorkbook workbook = open(file)) {
      assertThat(workbook.save(edit()).written()).isTrue();
    }
    try (HSSFWorkbook read = poi(file)) {
      HSSFSheet coins = read.getSheet("Coins");
      assertThat(coins.getRow(2).getCell(0).getNumericCellValue()).isEqualTo(1921);
      assertThat(coins.getRow(2).getCell(1).getStringCellValue()).isEqualTo("=dollar");
      assertThat(coins.getRow(2).getCell(2).getCellStyle().getDataFormat()).isEqualTo((short) 14);
      assertThat(coins.getRow(3).getCell(2).getLocalDateTimeCellValue().toLocalDate())
          .isEqualTo(LocalDate.of(2026, 11, 2));
      assertThat(coins.getRow(9).getCell(5).getNumericCellValue()).isEqualTo(3885);
    }
    try (XlsWorkbook workbook = open(file)) {
      assertThat(workbook.save(edit()).written()).isFalse();
    }
  }

  @Test
  void whatStandsBelowIsNeverOverwritten() throws Exception {
    Path file = book(row("Total"));
    byte[] before = Files.readAllBytes(file);
    try (XlsWorkbook workbook = open(file)) {
      assertThatThrownBy(() -> workbook.save(edit()))
          .hasMessageContaining("\"Total\" stands in cell Coins!B3");
    }
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }
}
