package fineweight.workbook.xls;

import static fineweight.workbook.xls.XlsFiles.open;
import static fineweight.workbook.xls.XlsFiles.poi;
import static fineweight.workbook.xls.XlsFiles.row;
import static fineweight.workbook.xls.XlsFiles.table;
import static fineweight.workbook.xls.XlsFiles.write;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.NamedCell;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetDraft.Kind;
import fineweight.workbook.Workbook.SaveResult;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookEdit.Removal;
import fineweight.workbook.WorkbookRefusal;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.apache.poi.hssf.record.ProtectRecord;
import org.apache.poi.hssf.record.Record;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class XlsDraftsTest {
  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void oneSheet() throws Exception {
    HSSFWorkbook workbook = new HSSFWorkbook();
    table(workbook, "Coins", row("Year"), row(1964));
    file = write(workbook, folder.resolve("coins.xls"));
  }

  private static DraftCell number(String value) {
    return new DraftCell(
        new CellContent.Number(new BigDecimal(value)), CellLook.number("0.00"), Kind.INPUT, "");
  }

  private static SheetDraft draft(String price, boolean hidden) {
    return new SheetDraft(
        "Spot",
        hidden,
        Arrays.asList(
            List.of(DraftCell.text("Spot prices", Kind.TITLE)),
            null,
            Arrays.asList(DraftCell.text("Silver", Kind.HEADER), null, number(price)),
            List.of(
                new DraftCell(
                    new CellContent.Text("see"), CellLook.GENERAL, Kind.REMARK, "Coins!A2"))),
        Map.of(0, 20.0),
        3,
        Map.of("C3:C3", "\"30,31\""));
  }

  private static WorkbookEdit edit(SheetDraft draft) {
    return new WorkbookEdit(
        List.of(),
        List.of(draft),
        List.of(new NamedCell("Fineweight_XAG", "Spot!$C$3", true)),
        Removal.NOTHING);
  }

  private SaveResult save(WorkbookEdit edit) throws Exception {
    try (XlsWorkbook workbook = open(file)) {
      return workbook.save(edit);
    }
  }

  @Test
  void addsASheetOfOurs() throws Exception {
    save(edit(draft("30", false)));

    HSSFWorkbook workbook = poi(file);
    HSSFSheet spot = workbook.getSheet("Spot");
    assertThat(workbook.getNumberOfSheets()).isEqualTo(2);
    assertThat(spot.getRow(2).getCell(2).getNumericCellValue()).isEqualTo(30);
    assertThat(spot.getRow(2).getCell(2).getCellStyle().getDataFormatString()).isEqualTo("0.00");
    assertThat(spot.getRow(3).getCell(0).getHyperlink().getAddress()).isEqualTo("Coins!A2");
    assertThat(spot.getColumnWidth(0)).isEqualTo(20 * 256);
    assertThat(spot.getPaneInformation().getHorizontalSplitPosition()).isEqualTo((short) 3);
    assertThat(spot.getDataValidations().get(0).getValidationConstraint().getExplicitListValues())
        .containsExactly("30", "31");
    assertThat(workbook.getName("Fineweight_XAG").getRefersToFormula()).isEqualTo("Spot!$C$3");
    assertThat(workbook.getActiveSheetIndex()).isZero();
  }

  @Test
  void theSameDraftAgainWritesNothing() throws Exception {
    save(edit(draft("30", true)));
    byte[] bytes = Files.readAllBytes(file);

    assertThat(save(edit(draft("30", true)))).isEqualTo(new SaveResult(false, 0, null));
    assertThat(file).hasBinaryContent(bytes);
    assertThat(poi(file).isSheetHidden(1)).isTrue();
  }

  @Test
  void aNewStateReplacesTheOldAndFormulasThatLookInStayValid() throws Exception {
    save(edit(draft("30", false)));
    HSSFWorkbook workbook = poi(file);
    workbook.getSheet("Coins").createRow(5).createCell(0).setCellFormula("Spot!C3*2");
    workbook.getSheet("Spot").createRow(9).createCell(4).setCellValue("left over");
    write(workbook, file);

    save(edit(draft("31", false)));

    HSSFWorkbook after = poi(file);
    assertThat(after.getSheet("Spot").getRow(2).getCell(2).getNumericCellValue()).isEqualTo(31);
    assertThat(after.getSheet("Spot").getRow(9).getCell(4)).isNull();
    assertThat(after.getSheet("Coins").getRow(5).getCell(0).getCellFormula())
        .isEqualTo("Spot!C3*2");
    assertThat(after.getSheet("Coins").getRow(5).getCell(0).getNumericCellValue()).isEqualTo(62);
    assertThat(after.getSheet("Spot").getDataValidations()).hasSize(1);
  }

  @Test
  void takesOurSheetOutAgain() throws Exception {
    save(edit(draft("30", false)));

    save(
        new WorkbookEdit(
            List.of(),
            List.of(),
            List.of(),
            new Removal(List.of(), List.of("Spot"), List.of("Fineweight_XAG"))));

    HSSFWorkbook workbook = poi(file);
    assertThat(workbook.getNumberOfSheets()).isEqualTo(1);
    assertThat(workbook.getNumberOfNames()).isZero();
    assertThat(workbook.getSheet("Coins").getRow(1).getCell(0).getNumericCellValue())
        .isEqualTo(1964);
  }

  @Test
  void refusesWhereSheetsMayNotBeAdded() throws Exception {
    HSSFWorkbook workbook = poi(file);
    for (Record record : workbook.getInternalWorkbook().getRecords()) {
      if (record instanceof ProtectRecord protection) {
        protection.setProtect(true);
      }
    }
    write(workbook, file);

    assertThat(
            catchThrowableOfType(WorkbookRefusal.class, () -> save(edit(draft("30", false))))
                .kind())
        .isEqualTo(WorkbookRefusal.Kind.PROTECTED);
  }

  @Test
  void refusesADraftThatIsTooLong() {
    SheetDraft longDraft =
        new SheetDraft(
            "Long",
            false,
            Collections.nCopies(65_537, List.of(number("1"))),
            Map.of(),
            0,
            Map.of());

    assertThat(catchThrowableOfType(WorkbookRefusal.class, () -> save(edit(longDraft))).kind())
        .isEqualTo(WorkbookRefusal.Kind.NO_ROOM);
  }
}
