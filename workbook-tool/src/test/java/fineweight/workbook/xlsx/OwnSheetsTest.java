package fineweight.workbook.xlsx;

import static fineweight.workbook.xlsx.Edits.drafts;
import static fineweight.workbook.xlsx.Edits.f;
import static fineweight.workbook.xlsx.Edits.n;
import static fineweight.workbook.xlsx.Edits.names;
import static fineweight.workbook.xlsx.Edits.number;
import static fineweight.workbook.xlsx.Edits.preview;
import static fineweight.workbook.xlsx.Edits.remove;
import static fineweight.workbook.xlsx.Edits.row;
import static fineweight.workbook.xlsx.Edits.rows;
import static fineweight.workbook.xlsx.Edits.save;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.NamedCell;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetDraft.Kind;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnSheetsTest {
  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void twoSheets() throws IOException {
    file =
        new RawWorkbook()
            .sheet("Coins", rows(row(1, n("A1", "1"), f("B1", "Spot*2", "60"))))
            .sheet("Second", rows(row(1, n("A1", "2"))))
            .write(folder.resolve("coins.xlsx"));
  }

  private static SheetDraft spot(String price) {
    return new SheetDraft(
        "Spot & more",
        false,
        List.of(
            List.of(DraftCell.text("Spot prices", Kind.TITLE)),
            List.of(
                DraftCell.text("Silver", Kind.HEADER),
                new DraftCell(number(price), CellLook.number("0.0000"), Kind.INPUT, ""),
                new DraftCell(
                    CellContent.Formula.number("B2*2", new BigDecimal(price).add(BigDecimal.ONE)),
                    new CellLook("", true),
                    Kind.TOTAL,
                    "'Coins'!A1")),
            List.of(DraftCell.text("=no formula", Kind.REMARK))),
        Map.of(0, 20.5),
        2,
        Map.of("C2:C3", "\"yes,no\""));
  }

  @Test
  void addsReplacesAndReturnsToTheSameBytes() throws Exception {
    assertThat(preview(file, drafts(spot("30"))))
        .containsExactly(
            "Spot & more!A1:  -> Spot prices",
            "Spot & more!A2:  -> Silver",
            "Spot & more!B2:  -> 30",
            "Spot & more!C2:  -> =B2*2 (31)",
            "Spot & more!A3:  -> =no formula");
    save(file, drafts(spot("30")));
    byte[] first = Files.readAllBytes(file);
    assertThat(save(file, drafts(spot("30"))).written()).isFalse();
    assertThat(preview(file, drafts(spot("31"))))
        .containsExactly("Spot & more!B2: 30 -> 31", "Spot & more!C2: =B2*2 (31) -> =B2*2 (32)");
    save(file, drafts(spot("31")));
    assertThat(Files.readAllBytes(file)).isNotEqualTo(first);
    save(file, drafts(spot("30")));
    assertThat(Files.readAllBytes(file)).isEqualTo(first);
  }

  @Test
  void anotherReaderSeesTheSheetAndFindsItValid() throws Exception {
    save(file, drafts(spot("30")));
    try (Workbook workbook = WorkbookFactory.create(file.toFile(), null, true)) {
      XSSFSheet sheet = (XSSFSheet) workbook.getSheet("Spot & more");
      assertThat(sheet.getCTWorksheet().validate()).isTrue();
      assertThat(sheet.getRow(1).getCell(1).getNumericCellValue()).isEqualTo(30.0);
      assertThat(sheet.getRow(1).getCell(1).getCellStyle().getDataFormatString())
          .isEqualTo("0.0000");
      assertThat(sheet.getRow(1).getCell(1).getCellStyle().getLocked()).isFalse();
      assertThat(sheet.getRow(2).getCell(0).getStringCellValue()).isEqualTo("=no formula");
      assertThat(sheet.getDataValidations().get(0).getRegions().getCellRangeAddress(0))
          .hasToString("org.apache.poi.ss.util.CellRangeAddress [C2:C3]");
      assertThat(sheet.getHyperlink(1, 2).getLocation()).isEqualTo("'Coins'!A1");
      assertThat(sheet.getPaneInformation().getHorizontalSplitPosition()).isEqualTo((short) 2);
      assertThat(((org.apache.poi.xssf.usermodel.XSSFWorkbook) workbook).getCTWorkbook().validate())
          .isTrue();
    }
  }

  @Test
  void keepsWhatTheOwnerPutBesideOurCells() throws Exception {
    Path second =
        new RawWorkbook()
            .sheet("Coins", rows(row(1, n("A1", "1"))))
            .sheet(
                "Spot &amp; more",
                "<sheetPr><tabColor rgb=\"FF00FF00\"/></sheetPr>"
                    + rows(row(1, n("A1", "1")))
                    + "<pageSetup orientation=\"landscape\"/>")
            .write(folder.resolve("other.xlsx"));
    save(second, drafts(spot("30")));
    assertThat(RawWorkbook.read(second, "xl/worksheets/sheet2.xml"))
        .contains(
            "<tabColor rgb=\"FF00FF00\"/></sheetPr><cols>",
            "</dataValidations><hyperlinks>",
            "</hyperlinks><pageSetup orientation=\"landscape\"/></worksheet>");
  }

  @Test
  void putsReplacesAndTakesOutNames() throws Exception {
    NamedCell spot = new NamedCell("Spot", "'Spot & more'!$B$2", true);
    List<String> stale = preview(file, names(spot));
    assertThat(stale).containsExactly("Coins!B1: =Spot*2 (60) -> (recalculated when opened)");
    save(file, names(spot));
    assertThat(RawWorkbook.read(file, "xl/workbook.xml"))
        .contains(
            "</sheets><definedNames><definedName name=\"Spot\" hidden=\"1\">"
                + "'Spot &amp; more'!$B$2</definedName></definedNames><calcPr");
    assertThat(save(file, names(spot)).written()).isFalse();
    save(file, names(new NamedCell("SPOT", "Second!$A$1", false)));
    try (XlsxWorkbook workbook = XlsxWorkbook.open(file, new PlainReplacement())) {
      assertThat(workbook.names()).containsExactly(new NamedCell("SPOT", "Second!$A$1", false));
    }
    save(file, remove(List.of(), List.of(), List.of("spot")));
    assertThat(RawWorkbook.read(file, "xl/workbook.xml")).doesNotContain("definedName");
  }

  @Test
  void takesASheetOutAndMovesTheNumbersOfTheOthers() throws Exception {
    Path three =
        new RawWorkbook()
            .before("<bookViews><workbookView activeTab=\"2\"/></bookViews>")
            .sheet("Coins", rows(row(1, n("A1", "1"))))
            .sheet("Ours", rows(row(1, n("A1", "2"))))
            .sheet("Third", rows(row(1, n("A1", "3"))))
            .names(
                "<definedNames><definedName name=\"_xlnm.Print_Area\" localSheetId=\"1\">Ours!$A$1"
                    + "</definedName><definedName name=\"_xlnm.Print_Area\" localSheetId=\"2\">"
                    + "Third!$A$1</definedName></definedNames>")
            .write(folder.resolve("three.xlsx"));
    save(three, remove(List.of(), List.of("Ours"), List.of()));
    assertThat(RawWorkbook.read(three, "xl/worksheets/sheet2.xml")).isNull();
    assertThat(RawWorkbook.read(three, "[Content_Types].xml")).doesNotContain("sheet2.xml");
    assertThat(RawWorkbook.read(three, "xl/workbook.xml"))
        .doesNotContain("Ours")
        .contains("activeTab=\"1\"", "localSheetId=\"1\">Third!$A$1");
  }

  @Test
  void refusesToTakeOutASheetThatAFormulaLooksAt() throws Exception {
    Path looking =
        new RawWorkbook()
            .sheet("Coins", rows(row(1, f("A1", "Ours!A1", "1"))))
            .sheet("Ours", rows(row(1, n("A1", "2"))))
            .write(folder.resolve("looking.xlsx"));
    WorkbookEdit out = remove(List.of(), List.of("Ours"), List.of());
    assertThatThrownBy(() -> save(looking, out))
        .isInstanceOf(WorkbookRefusal.class)
        .hasMessageContaining("the formula in Coins!A1 looks at it");
  }

  @Test
  void hidesASheet() throws Exception {
    SheetDraft shown = spot("30");
    SheetDraft hidden =
        new SheetDraft(shown.name(), true, shown.rows(), shown.widths(), 2, shown.dropDowns());
    save(file, drafts(shown));
    save(file, drafts(hidden));
    assertThat(RawWorkbook.read(file, "xl/workbook.xml")).contains("state=\"hidden\"");
    save(file, drafts(shown));
    assertThat(RawWorkbook.read(file, "xl/workbook.xml")).doesNotContain("state=\"hidden\"");
  }
}
