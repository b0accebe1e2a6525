package fineweight.workbook.xlsx;

import static fineweight.workbook.xlsx.Edits.f;
import static fineweight.workbook.xlsx.Edits.n;
import static fineweight.workbook.xlsx.Edits.number;
import static fineweight.workbook.xlsx.Edits.row;
import static fineweight.workbook.xlsx.Edits.rows;
import static fineweight.workbook.xlsx.Edits.text;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellContent;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.oracle.Expected;
import fineweight.workbook.oracle.Oracle;
import fineweight.workbook.validity.WorkbookValidator;
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

/** Rows put under a list, each time looked over by the oracle. */
class RowsUnderListTest {
  private static final String FORMATS =
      "<xf/><xf numFmtId=\"14\" applyNumberFormat=\"1\"/><xf fontId=\"1\"/>".repeat(3);

  @TempDir Path folder;

  private Path file() {
    return folder.resolve("coins.xlsx");
  }

  private Path book(String afterRows, String... rows) throws Exception {
    return new RawWorkbook()
        .styles("", FORMATS)
        .sheet("Coins", rows(rows) + afterRows)
        .write(file());
  }

  private static RowsEdit under(int lastRow, int lastColumn, List<Map<Integer, CellContent>> rows) {
    return new RowsEdit("Coins", lastRow, 0, lastColumn, rows, new TreeMap<>());
  }

  private static Map<Integer, CellContent> coin(String year, String words) {
    return Map.of(0, number(year), 1, text(words));
  }

  /** Saves, and lets the oracle, the validator and a second run look at it. */
  private List<CellChange> save(RowsEdit rows) throws Exception {
    WorkbookEdit edit = WorkbookEdit.of(rows);
    Path before = Files.copy(file(), folder.resolve("before.xlsx"));
    List<CellChange> changes = new ArrayList<>();
    try (XlsxWorkbook workbook = XlsxWorkbook.open(file(), new PlainReplacement())) {
      workbook.preview(edit, changes::add);
      assertThat(workbook.save(edit).changedCells()).isEqualTo(changes.size());
    }
    assertThat(Oracle.findings(before, file(), Expected.of(edit, changes))).isEmpty();
    List<String> faults = new ArrayList<>(WorkbookValidator.findings(file()));
    faults.removeAll(WorkbookValidator.findings(before));
    assertThat(faults).isEmpty();
    assertThat(Edits.preview(file(), edit)).isEmpty();
    return changes;
  }

  private static String styled(String place, int style, String value) {
    return "<c r=\"%s\" s=\"%d\"><v>%s</v></c>".formatted(place, style, value);
  }

  @Test
  void standsUnderTheListAndLooksLikeItsLastRow() throws Exception {
    book(
        "",
        row(1, n("A1", "1"), n("B1", "2")),
        row(2, styled("A2", 2, "1964"), styled("C2", 1, "40000")));
    List<CellChange> changes =
        save(
            under(
                1,
                2,
                List.of(
                    coin("1921", "dollar"),
                    Map.of(2, new CellContent.Day(LocalDate.of(2026, 11, 2))))));
    // 2 November 2026 is day 46328 of the calendar of 1900 (ISO 8601 day arithmetic from
    // 1899-12-30).
    assertThat(RawWorkbook.sheetOne(file()))
        .contains("<row r=\"3\"><c r=\"A3\" s=\"2\"><v>1921</v></c><c r=\"B3\" t=\"inlineStr\"")
        .contains("<c r=\"C3\" s=\"1\"/></row>")
        .contains(
            "<row r=\"4\"><c r=\"A4\" s=\"2\"/><c r=\"C4\" s=\"1\"><v>46328</v></c></row></sheetData>");
    assertThat(changes.stream().map(each -> each.place().toString()))
        .containsExactly("Coins!A3", "Coins!B3", "Coins!C4");
  }

  @Test
  void usesRowsThatAreThereAndEmpty() throws Exception {
    book(
        "",
        row(1, n("A1", "1")),
        row(2, n("A2", "1964")),
        "<row r=\"3\" ht=\"30\" customHeight=\"1\"><c r=\"A3\" s=\"2\"/></row>");
    save(under(1, 1, List.of(coin("1921", "dollar"))));
    assertThat(RawWorkbook.sheetOne(file()))
        .contains(
            "<row r=\"3\" ht=\"30\" customHeight=\"1\"><c r=\"A3\" s=\"2\"><v>1921</v></c><c r=\"B3\"");
  }

  @Test
  void whatStandsBelowIsNeverMovedOrOverwritten() throws Exception {
    book("", row(1, n("A1", "1")), row(2, n("A2", "1964")), row(3, f("A3", "SUM(A2:A2)", "1964")));
    byte[] before = Files.readAllBytes(file());
    assertThatThrownBy(
            () -> Edits.save(file(), WorkbookEdit.of(under(1, 1, List.of(coin("1921", "dollar"))))))
        .isInstanceOf(WorkbookRefusal.class)
        .hasMessage(
            "There is no room for 1 new rows under row 2 of sheet \"Coins\", because \"=SUM(A2:A2) (1964)\" stands in cell Coins!A3; make room there first, or put the rows on a sheet of their own.");
    assertThat(Files.readAllBytes(file())).isEqualTo(before);
  }

  @Test
  void whatStandsBesideTheListIsNotInTheWay() throws Exception {
    book("", row(1, n("A1", "1")), row(2, n("A2", "1964")), row(3, n("F3", "7")));
    save(under(1, 1, List.of(coin("1921", "dollar"))));
    assertThat(RawWorkbook.sheetOne(file())).contains("<c r=\"F3\"><v>7</v></c>");
  }

  @Test
  void aFormulaFilledDownFurtherThanTheListStaysAndIsCalculatedAnew() throws Exception {
    book(
        "",
        row(1, n("A1", "1")),
        row(2, n("A2", "1964"), f("C2", "A2+1", "1965")),
        row(3, f("C3", "A3+1", "1")));
    List<CellChange> changes = save(under(1, 2, List.of(coin("1921", "dollar"))));
    assertThat(RawWorkbook.sheetOne(file())).contains("<c r=\"C3\"><f>A3+1</f></c>");
    assertThat(changes.stream().map(each -> each.place().toString())).contains("Coins!C3");
  }

  @Test
  void mergedCellsAreInTheWay() throws Exception {
    book(
        "<mergeCells count=\"1\"><mergeCell ref=\"B3:B5\"/></mergeCells>",
        row(1, n("A1", "1")),
        row(2, n("A2", "1")));
    assertThatThrownBy(() -> save(under(1, 1, List.of(coin("1921", "dollar")))))
        .hasMessageContaining("cells are merged around row 3");
  }

  @Test
  void aProtectedSheetIsLeftAlone() throws Exception {
    book("<sheetProtection sheet=\"1\"/>", row(1, n("A1", "1")), row(2, n("A2", "1")));
    assertThatThrownBy(() -> save(under(1, 1, List.of(coin("1921", "dollar")))))
        .hasMessageContaining("is protected against changes");
  }

  @Test
  void dropDownsAndFormatsThatEndWithTheListFollowItAndOthersStay() throws Exception {
    book(
        "<conditionalFormatting sqref=\"A2:B3 D2:D3\"><cfRule type=\"expression\" priority=\"1\"><formula>A2&gt;1</formula></cfRule></conditionalFormatting>"
            + "<conditionalFormatting sqref=\"A3\"><cfRule type=\"expression\" priority=\"2\"><formula>A3&gt;1</formula></cfRule></conditionalFormatting>"
            + "<dataValidations count=\"2\"><dataValidation type=\"list\" sqref=\"B2:B3\"><formula1>\"a,b\"</formula1></dataValidation>"
            + "<dataValidation type=\"whole\" sqref=\"A2:A40\"><formula1>1</formula1></dataValidation></dataValidations>",
        row(1, n("A1", "1"), n("B1", "1")),
        row(2, n("A2", "1964"), n("B2", "1")),
        row(3, n("A3", "1964"), n("B3", "1")));
    save(under(2, 1, List.of(coin("1921", "dollar"), coin("1922", "dollar"))));
    assertThat(RawWorkbook.sheetOne(file()))
        .contains("sqref=\"A2:B5 D2:D3\"")
        .contains("sqref=\"A3\"")
        .contains("sqref=\"B2:B5\"")
        .contains("sqref=\"A2:A40\"");
  }

  private void table(String reference, String more) throws Exception {
    new RawWorkbook()
        .sheet(
            "Coins",
            rows(
                    row(
                        1,
                        "<c r=\"A1\" t=\"inlineStr\"><is><t>Year</t></is></c>",
                        "<c r=\"B1\" t=\"inlineStr\"><is><t>Coin</t></is></c>"),
                    row(2, n("A2", "1964"), n("B2", "1")),
                    row(3, n("A3", "1921"), n("B3", "1")))
                + "<tableParts count=\"1\"><tablePart r:id=\"T1\"/></tableParts>")
        .sheet("Sums", rows(row(1, f("A1", "SUM(Coins[Year])", "3885"))))
        .part(
            "xl/worksheets/_rels/sheet1.xml.rels",
            "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"T1\" Type=\"%s/table\" Target=\"../tables/table1.xml\"/></Relationships>"
                .formatted(RawWorkbook.RELATIONS))
        .part(
            "xl/tables/table1.xml",
            "<table xmlns=\"%s\" id=\"1\" name=\"Coins\" displayName=\"Coins\" ref=\"%s\"%s><autoFilter ref=\"A1:B3\"/><tableColumns count=\"2\"><tableColumn id=\"1\" name=\"Year\"/><tableColumn id=\"2\" name=\"Coin\"/></tableColumns></table>"
                .formatted(RawWorkbook.MAIN, reference, more))
        .type(
            "xl/tables/table1.xml",
            "application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml")
        .write(file());
  }

  @Test
  void aTableGrowsWithItsFilterAndSumsOverItAreCalculatedAnew() throws Exception {
    table("A1:B3", "");
    save(under(2, 1, List.of(coin("1922", "dollar"))));
    assertThat(RawWorkbook.read(file(), "xl/tables/table1.xml"))
        .contains(" ref=\"A1:B4\"")
        .contains("<autoFilter ref=\"A1:B4\"/>");
    assertThat(RawWorkbook.read(file(), "xl/worksheets/sheet2.xml"))
        .contains("<c r=\"A1\"><f>SUM(Coins[Year])</f></c>");
  }

  @Test
  void aTotalsRowIsInTheWay() throws Exception {
    table("A1:B4", " totalsRowCount=\"1\"");
    assertThatThrownBy(() -> save(under(2, 1, List.of(coin("1922", "dollar")))))
        .hasMessageContaining("row 4 is the totals row of the table \"Coins\"");
  }

  @Test
  void correctsRowsOfTheListInTheSameStep() throws Exception {
    book(
        "",
        row(1, n("A1", "1")),
        row(2, styled("A2", 2, "1964"), f("B2", "A2+1", "1965")),
        row(3, n("A3", "1")));
    SortedMap<Integer, Map<Integer, CellContent>> corrections = new TreeMap<>();
    corrections.put(1, Map.of(0, number("1940")));
    List<CellChange> changes =
        save(new RowsEdit("Coins", 2, 0, 1, List.of(Map.of(0, number("1942"))), corrections));
    assertThat(RawWorkbook.sheetOne(file()))
        .contains("<c r=\"A2\" s=\"2\"><v>1940</v></c><c r=\"B2\"><f>A2+1</f></c>")
        .contains("<row r=\"4\"><c r=\"A4\"><v>1942</v></c></row>");
    assertThat(changes.stream().map(each -> each.place().toString()))
        .containsExactly("Coins!A2", "Coins!B2", "Coins!A4");
  }
}
