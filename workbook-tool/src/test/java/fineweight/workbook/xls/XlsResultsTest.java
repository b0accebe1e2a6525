package fineweight.workbook.xls;

import static fineweight.workbook.xls.XlsFiles.changes;
import static fineweight.workbook.xls.XlsFiles.column;
import static fineweight.workbook.xls.XlsFiles.columns;
import static fineweight.workbook.xls.XlsFiles.open;
import static fineweight.workbook.xls.XlsFiles.poi;
import static fineweight.workbook.xls.XlsFiles.row;
import static fineweight.workbook.xls.XlsFiles.table;
import static fineweight.workbook.xls.XlsFiles.write;
import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellContent;
import fineweight.workbook.WorkbookEdit;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFName;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The edit puts 2 into B2 and B3 of the sheet Coins. */
class XlsResultsTest {
  private static final WorkbookEdit EDIT =
      columns("Coins", 2, column(1, null, "", row -> new CellContent.Number(new BigDecimal("2"))));

  @TempDir Path folder;

  private Path workbook(String... formulas) throws Exception {
    HSSFWorkbook workbook = new HSSFWorkbook();
    table(workbook, "Coins", row("Year", "Ours"), row(1, 0), row(2, 0));
    HSSFName name = workbook.createName();
    name.setNameName("Mine");
    name.setRefersToFormula("Coins!$B$2:$B$3");
    Object[][] rows = new Object[formulas.length][];
    for (int i = 0; i < formulas.length; i++) {
      rows[i] = row("=" + formulas[i]);
    }
    table(workbook, "Sums", rows);
    workbook.getNameRecord(0).setHidden(true);
    workbook.getInternalWorkbook().getRecalcId().setEngineId(191_029);
    return write(workbook, folder.resolve("coins.xls"));
  }

  private static int engine(Path file) throws Exception {
    return poi(file).getInternalWorkbook().getRecalcId().getEngineId();
  }

  private static List<String> results(Path file) throws Exception {
    return changes(file, EDIT).stream()
        .filter(change -> change.place().sheet().equals("Sums"))
        .map(XlsResultsTest::words)
        .sorted()
        .toList();
  }

  private static String words(CellChange change) {
    return change.place() + " " + change.before() + " " + change.after();
  }

  @Test
  void followsCellsAreasAndOtherSheets() throws Exception {
    assertThat(results(workbook("Coins!B2+1", "SUM(Coins!A1:C9)", "SUM(Coins!A2:A3)")))
        .containsExactly("Sums!A1 0 3", "Sums!A2 0 7");
  }

  @Test
  void followsAHiddenName() throws Exception {
    assertThat(results(workbook("SUM(Mine)"))).containsExactly("Sums!A1 0 4");
  }

  @Test
  void followsAChainUpwardsAndDownwards() throws Exception {
    assertThat(results(workbook("A2*2", "A3*2", "Coins!B2", "A3+1", "A4+1")))
        .containsExactly("Sums!A1 0 8", "Sums!A2 0 4", "Sums!A3 0 2", "Sums!A4 0 3", "Sums!A5 0 4");
  }

  @Test
  void followsCellsThatShowOnlyOnCalculation() throws Exception {
    assertThat(results(workbook("INDIRECT(\"Coins!B\"&2)", "OFFSET(Coins!A1,1,1)")))
        .containsExactly("Sums!A1 0 2", "Sums!A2 0 2");
  }

  @Test
  void storesTextsTruthsAndErrorsToo() throws Exception {
    assertThat(results(workbook("IF(Coins!B2=2,\"two\",1)", "Coins!B2=2", "1/(Coins!B2-2)")))
        .containsExactly("Sums!A1 0 two", "Sums!A2 0 TRUE", "Sums!A3 0 #DIV/0!");
  }

  @Test
  void asksTheOfficeToCalculateWhatItCannot() throws Exception {
    Path file = workbook("INFO(\"osversion\")&Coins!B2", "Coins!B2");
    assertThat(engine(file)).isNotZero();

    try (XlsWorkbook coins = open(file)) {
      coins.save(EDIT);
    }

    HSSFWorkbook after = poi(file);
    assertThat(engine(file)).isZero();
    assertThat(after.getSheet("Sums").getRow(1).getCell(0).getNumericCellValue()).isEqualTo(2);
    try (XlsWorkbook coins = open(file)) {
      assertThat(coins.save(EDIT).written()).isFalse();
    }
  }
}
