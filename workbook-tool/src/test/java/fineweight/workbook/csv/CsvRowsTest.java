package fineweight.workbook.csv;

import static fineweight.workbook.csv.CsvFiles.open;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellContent;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.WorkbookEdit;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows put under a list in a text table, in the manner of its other lines. */
class CsvRowsTest {
  @TempDir Path folder;

  private String saved(String content, RowsEdit rows) throws Exception {
    Path file = Files.writeString(folder.resolve("coins.csv"), content);
    List<CellChange> changes = new ArrayList<>();
    WorkbookEdit edit = WorkbookEdit.of(rows);
    try (CsvWorkbook workbook = open(file)) {
      workbook.preview(edit, changes::add);
      assertThat(workbook.save(edit).changedCells()).isEqualTo(changes.size());
    }
    try (CsvWorkbook workbook = open(file)) {
      assertThat(workbook.save(edit).written()).isFalse();
    }
    return Files.readString(file);
  }

  private static RowsEdit under(int lastRow) {
    return new RowsEdit(
        "",
        lastRow,
        0,
        2,
        List.of(
            Map.of(
                0,
                new CellContent.Number(BigDecimal.valueOf(1921)),
                1,
                new CellContent.Text("=dollar")),
            Map.of(1, new CellContent.Day(LocalDate.of(2026, 11, 2)))),
        new TreeMap<>());
  }

  @Test
  void keepsLineBreaksQuotesAndAMissingLastBreak() throws Exception {
    assertThat(saved("Year,Coin,Note\n1964,half,\n", under(1)))
        .isEqualTo("Year,Coin,Note\n1964,half,\n1921,'=dollar,\n,2026-11-02,\n");
    assertThat(saved("Year;Coin;Note\r\n1964;half;", under(1)))
        .isEqualTo("Year;Coin;Note\r\n1964;half;\r\n1921;'=dollar;\r\n;2026-11-02;");
    assertThat(saved("\"Year\",\"Coin\",\"Note\"\n\"1964\",\"half\",\"x\"\n", under(1)))
        .isEqualTo(
            "\"Year\",\"Coin\",\"Note\"\n\"1964\",\"half\",\"x\"\n\"1921\",\"'=dollar\",\"\"\n\"\",\"2026-11-02\",\"\"\n");
  }

  @Test
  void usesBlankLinesAndLeavesTheRestOfTheFileAlone() throws Exception {
    assertThat(saved("Year,Coin,Note\n1964,half,\n\n\n\nTotal,1,\n", under(1)))
        .isEqualTo("Year,Coin,Note\n1964,half,\n1921,'=dollar,\n,2026-11-02,\n\nTotal,1,\n");
  }

  @Test
  void whatStandsBelowIsNeverOverwritten() {
    assertThatThrownBy(() -> saved("Year,Coin,Note\n1964,half,\n\nTotal,1,\n", under(1)))
        .hasMessageContaining("\"Total\" stands in cell A4");
    assertThat(folder.resolve("coins.csv")).hasContent("Year,Coin,Note\n1964,half,\n\nTotal,1,\n");
  }

  @Test
  void correctsRowsOfTheListInTheSameStep() throws Exception {
    SortedMap<Integer, Map<Integer, CellContent>> corrections = new TreeMap<>();
    corrections.put(1, Map.of(1, new CellContent.Text("dime, 1940")));
    RowsEdit rows =
        new RowsEdit(
            "", 1, 0, 1, List.of(Map.of(1, new CellContent.Text("dime 1942"))), corrections);
    assertThat(saved("No,Coin\n1,2 dimes 1940 1942\n", rows))
        .isEqualTo("No,Coin\n1,\"dime, 1940\"\n,dime 1942\n");
  }
}
