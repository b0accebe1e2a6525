package fineweight.workbook.xls;

import static fineweight.workbook.xls.XlsFiles.changes;
import static fineweight.workbook.xls.XlsFiles.column;
import static fineweight.workbook.xls.XlsFiles.columns;
import static fineweight.workbook.xls.XlsFiles.open;
import static fineweight.workbook.xls.XlsFiles.poi;
import static fineweight.workbook.xls.XlsFiles.row;
import static fineweight.workbook.xls.XlsFiles.table;
import static fineweight.workbook.xls.XlsFiles.without;
import static fineweight.workbook.xls.XlsFiles.write;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellPlace;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.NamedCell;
import fineweight.workbook.Workbook.SaveResult;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookEdit.Removal;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFFont;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class XlsWorkbookTest {
  private static final CellContent HALF = new CellContent.Number(new BigDecimal("0.5"));

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void aSmallInventory() throws Exception {
    HSSFWorkbook workbook = new HSSFWorkbook();
    HSSFSheet coins =
        table(
            workbook,
            "Coins",
            row("Year", "Coin", "Grams"),
            row(1964, "half", 12.5),
            row(1921, "dollar", 26.73));
    HSSFCellStyle boxed = workbook.createCellStyle();
    HSSFFont font = workbook.createFont();
    font.setBold(true);
    boxed.setFont(font);
    boxed.setBorderBottom(BorderStyle.THICK);
    coins.getRow(0).getCell(2).setCellStyle(boxed);
    HSSFCellStyle lined = workbook.createCellStyle();
    lined.setBorderLeft(BorderStyle.DOTTED);
    coins.getRow(1).getCell(2).setCellStyle(lined);
    table(workbook, "Sums", row("=SUM(Coins!D2:D3)", "=A1*2", "=SUM(Coins!C2:C3)"));
    file = write(workbook, folder.resolve("coins.xls"));
  }

  private SaveResult save(WorkbookEdit edit) throws Exception {
    try (XlsWorkbook workbook = open(file)) {
      return workbook.save(edit);
    }
  }

  private WorkbookRefusal refused(WorkbookEdit edit) {
    return catchThrowableOfType(WorkbookRefusal.class, () -> save(edit));
  }

  private static ColumnEdit halves(int column) {
    return column(column, "Ours", "0.0000", row -> HALF);
  }

  private HSSFCell cell(String sheet, int row, int column) throws Exception {
    return XlsCells.cell(poi(file).getSheet(sheet), row, column);
  }

  @Test
  void putsAColumnInWithTheNeighboursLook() throws Exception {
    save(columns("Coins", 2, halves(3)));

    HSSFCell header = cell("Coins", 0, 3);
    assertThat(header.getStringCellValue()).isEqualTo("Ours");
    assertThat(header.getCellStyle().getBorderBottom()).isEqualTo(BorderStyle.THICK);
    HSSFCell first = cell("Coins", 1, 3);
    assertThat(first.getNumericCellValue()).isEqualTo(0.5);
    assertThat(first.getCellStyle().getBorderLeft()).isEqualTo(BorderStyle.DOTTED);
    assertThat(first.getCellStyle().getDataFormatString()).isEqualTo("0.0000");
    assertThat(poi(file).getSheet("Coins").getColumnWidth(3)).isEqualTo(12 * 256);
  }

  @Test
  void oneStyleServesAWholeColumn() throws Exception {
    int before = poi(file).getNumCellStyles();

    save(columns("Coins", 2, halves(3), halves(4)));

    assertThat(poi(file).getNumCellStyles()).isLessThanOrEqualTo(before + 2);
  }

  @Test
  void keepsEveryOtherCell() throws Exception {
    save(columns("Coins", 2, halves(3)));

    assertThat(cell("Coins", 1, 0).getNumericCellValue()).isEqualTo(1964);
    assertThat(cell("Coins", 2, 1).getStringCellValue()).isEqualTo("dollar");
    assertThat(cell("Sums", 0, 2).getCellFormula()).isEqualTo("SUM(Coins!C2:C3)");
  }

  @Test
  void tellsEveryChangeBeforehandResultsOfTheOwnersFormulasToo() throws Exception {
    assertThat(changes(file, columns("Coins", 2, halves(3))))
        .containsExactlyInAnyOrder(
            change("Coins", 0, 3, "", "Ours"),
            change("Coins", 1, 3, "", "0.5"),
            change("Coins", 2, 3, "", "0.5"),
            change("Sums", 0, 0, "0", "1"),
            change("Sums", 0, 1, "0", "2"));
  }

  private static CellChange change(String sheet, int row, int column, String before, String after) {
    return new CellChange(new CellPlace(sheet, row, column), before, after);
  }

  @Test
  void storesTheNewResultsOfDependentFormulas() throws Exception {
    SaveResult result = save(columns("Coins", 2, halves(3)));

    assertThat(result.changedCells()).isEqualTo(5);
    assertThat(cell("Sums", 0, 0).getNumericCellValue()).isEqualTo(1.0);
    assertThat(cell("Sums", 0, 1).getNumericCellValue()).isEqualTo(2.0);
    assertThat(cell("Sums", 0, 2).getNumericCellValue()).as("depends on nothing of ours").isZero();
  }

  @Test
  void anEditThatChangesNothingWritesNothing() throws Exception {
    WorkbookEdit edit =
        new WorkbookEdit(
            List.of(
                columns(
                        "Coins",
                        2,
                        halves(3),
                        column(
                            4,
                            "Melt",
                            "0.00",
                            row ->
                                CellContent.Formula.number(
                                    "ROUND( D" + (row + 1) + " * Fineweight_XAG , 2)",
                                    new BigDecimal("15.00"))))
                    .sheets()
                    .get(0)),
            List.of(),
            List.of(new NamedCell("Fineweight_XAG", "Sums!$C$1", true)),
            Removal.NOTHING);
    save(edit);
    byte[] bytes = Files.readAllBytes(file);

    assertThat(changes(file, edit)).isEmpty();
    assertThat(save(edit)).isEqualTo(new SaveResult(false, 0, null));
    assertThat(file).hasBinaryContent(bytes);
  }

  @Test
  void putsAFormulaInWithItsResult() throws Exception {
    save(
        columns(
            "Coins",
            2,
            column(
                3, "Melt", "", row -> CellContent.Formula.number("C2*2", new BigDecimal("24.99"))),
            column(4, "State", "", row -> CellContent.Formula.text("B2&\"!\"", "open"))));

    HSSFCell melt = cell("Coins", 1, 3);
    assertThat(melt.getCellFormula()).isEqualTo("C2*2");
    assertThat(melt.getNumericCellValue()).isEqualTo(24.99);
    HSSFCell state = cell("Coins", 1, 4);
    assertThat(state.getCellFormula()).isEqualTo("B2&\"!\"");
    assertThat(state.getStringCellValue()).isEqualTo("open");
  }

  @Test
  void ourTextNeverBecomesAFormula() throws Exception {
    save(columns("Coins", 1, column(3, "=Ours", "", row -> new CellContent.Text("=1+1"))));

    assertThat(cell("Coins", 1, 3).getCellType()).isEqualTo(CellType.STRING);
    assertThat(cell("Coins", 1, 3).getStringCellValue()).isEqualTo("=1+1");
    assertThat(cell("Coins", 0, 3).getCellType()).isEqualTo(CellType.STRING);
  }

  @Test
  void aCellOfOursKeepsTheLookItsOwnerGaveIt() throws Exception {
    save(columns("Coins", 2, halves(3)));
    HSSFWorkbook changed = poi(file);
    HSSFCellStyle own = changed.createCellStyle();
    own.setDataFormat(changed.createDataFormat().getFormat("0.0"));
    changed.getSheet("Coins").getRow(1).getCell(3).setCellStyle(own);
    write(changed, file);

    save(
        columns(
            "Coins",
            2,
            column(3, "Ours", "0.0000", row -> new CellContent.Number(new BigDecimal("0.75")))));

    assertThat(cell("Coins", 1, 3).getNumericCellValue()).isEqualTo(0.75);
    assertThat(cell("Coins", 1, 3).getCellStyle().getDataFormatString()).isEqualTo("0.0");
  }

  @Test
  void namesArePutHiddenAndTakenOut() throws Exception {
    NamedCell ours = new NamedCell("Fineweight_XAG", "Sums!$A$1", true);
    save(new WorkbookEdit(List.of(), List.of(), List.of(ours), Removal.NOTHING));
    try (XlsWorkbook workbook = open(file)) {
      assertThat(workbook.names()).containsExactly(ours);
    }

    NamedCell moved = new NamedCell("Fineweight_XAG", "Sums!$B$1", true);
    assertThat(
            save(new WorkbookEdit(List.of(), List.of(), List.of(moved), Removal.NOTHING)).written())
        .isTrue();
    try (XlsWorkbook workbook = open(file)) {
      assertThat(workbook.names()).containsExactly(moved);
    }

    save(
        new WorkbookEdit(
            List.of(),
            List.of(),
            List.of(),
            new Removal(List.of(), List.of(), List.of("Fineweight_XAG"))));
    try (XlsWorkbook workbook = open(file)) {
      assertThat(workbook.names()).isEmpty();
    }
  }

  @Test
  void takingColumnsOutGivesTheOldCellsBack() throws Exception {
    List<?> before = XlsFiles.cells(file, "Coins");
    int width = poi(file).getSheet("Coins").getColumnWidth(3);
    save(columns("Coins", 2, halves(3), halves(4)));

    save(without("Coins", 3, 4));

    assertThat(XlsFiles.cells(file, "Coins")).isEqualTo(before);
    try (XlsWorkbook workbook = open(file)) {
      assertThat(workbook.usedArea("Coins").lastColumn()).isEqualTo(2);
    }
    assertThat(poi(file).getSheet("Coins").getColumnWidth(3)).isEqualTo(width);
    assertThat(cell("Sums", 0, 0).getNumericCellValue()).isZero();
  }

  @Test
  void aColumnOfOursAmongForeignOnesIsOnlyEmptied() throws Exception {
    save(without("Coins", 1));

    assertThat(cell("Coins", 1, 1).getCellType()).isEqualTo(CellType.BLANK);
    assertThat(cell("Coins", 1, 2).getNumericCellValue()).isEqualTo(12.5);
  }

  @Test
  void aTitleAboveOurColumnStays() throws Exception {
    HSSFWorkbook workbook = new HSSFWorkbook();
    table(workbook, "Coins", row("t", null, "above"), row("Year", "Coin", "Ours"), row(1, "x", 5));
    write(workbook, file);

    save(
        new WorkbookEdit(
            List.of(),
            List.of(),
            List.of(),
            new Removal(
                List.of(new WorkbookEdit.ColumnPlace("Coins", 1, 2)), List.of(), List.of())));

    assertThat(cell("Coins", 0, 2).getStringCellValue()).isEqualTo("above");
    assertThat(cell("Coins", 1, 2)).isNull();
  }

  @Test
  void keepsTheProtectionOfASheet() throws Exception {
    HSSFWorkbook workbook = poi(file);
    workbook.getSheet("Coins").protectSheet("secret");
    write(workbook, file);

    assertThat(save(columns("Coins", 2, halves(3))).written()).isTrue();
    assertThat(poi(file).getSheet("Coins").getProtect()).isTrue();
  }

  @Test
  void refusesAWorkbookThatAsksForAPasswordBeforeChanges() throws Exception {
    HSSFWorkbook workbook = poi(file);
    workbook.writeProtectWorkbook("secret", "someone");
    write(workbook, file);

    assertThat(refused(columns("Coins", 2, halves(3))).kind()).isEqualTo(Kind.PROTECTED);
  }

  @Test
  void refusesAColumnBeyondTheLast() throws Exception {
    assertThat(refused(columns("Coins", 2, halves(256))).kind()).isEqualTo(Kind.NO_ROOM);
    assertThat(refused(columns("Coins", 65_536, halves(3))).kind()).isEqualTo(Kind.NO_ROOM);
    assertThat(refused(columns("Coins", 2, halves(256)))).hasMessageContaining("column IV");
  }

  @Test
  void fillsTheLastColumnAndRow() throws Exception {
    save(columns("Coins", 65_535, column(255, "Ours", "", row -> row == 65_535 ? HALF : null)));

    assertThat(cell("Coins", 65_535, 255).getNumericCellValue()).isEqualTo(0.5);
  }

  @Test
  void refusesMergedCellsInItsWay() throws Exception {
    HSSFWorkbook workbook = poi(file);
    workbook.getSheet("Coins").addMergedRegion(new CellRangeAddress(1, 1, 2, 4));
    write(workbook, file);

    WorkbookRefusal refusal = refused(columns("Coins", 2, halves(3)));

    assertThat(refusal.kind()).isEqualTo(Kind.NO_ROOM);
    assertThat(refusal).hasMessageContaining("C2:E2");
  }

  @Test
  void refusesAFileThatChangedSinceItWasRead() throws Exception {
    try (XlsWorkbook workbook = open(file)) {
      Files.write(file, new byte[] {1});
      assertThat(
              catchThrowableOfType(
                      WorkbookRefusal.class, () -> workbook.save(columns("Coins", 2, halves(3))))
                  .kind())
          .isEqualTo(Kind.IN_USE);
    }
  }

  @Test
  void writesNoUserName() throws Exception {
    save(columns("Coins", 2, halves(3)));

    String bytes = Files.readString(file, StandardCharsets.ISO_8859_1);
    String home = System.getProperty("user.home");
    assertThat(bytes).doesNotContain(home);
    String before = Files.readString(backup(), StandardCharsets.ISO_8859_1);
    String user = System.getProperty("user.name");
    assertThat(bytes.split(user, -1)).hasSameSizeAs(before.split(user, -1));
  }

  private Path backup() {
    return folder.resolve("coins.fineweight-1.xls");
  }
}
