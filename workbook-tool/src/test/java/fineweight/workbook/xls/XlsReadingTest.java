package fineweight.workbook.xls;

import static fineweight.workbook.xls.XlsFiles.cells;
import static fineweight.workbook.xls.XlsFiles.open;
import static fineweight.workbook.xls.XlsFiles.row;
import static fineweight.workbook.xls.XlsFiles.table;
import static fineweight.workbook.xls.XlsFiles.write;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fineweight.workbook.Cell;
import fineweight.workbook.CellPlace;
import fineweight.workbook.CellValue;
import fineweight.workbook.NamedCell;
import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.SheetSummary.Visibility;
import fineweight.workbook.Workbook.UsedArea;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import fineweight.workbook.open.CorpusFiles;
import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.hssf.record.BOFRecord;
import org.apache.poi.hssf.record.DateWindow1904Record;
import org.apache.poi.hssf.record.Record;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFRow;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.util.LittleEndian;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class XlsReadingTest {
  @TempDir Path folder;
  private final HSSFWorkbook workbook = new HSSFWorkbook();

  private Path file() throws Exception {
    return write(workbook, folder.resolve("coins.xls"));
  }

  private CellValue only(HSSFSheet sheet) throws Exception {
    String name = sheet.getSheetName();
    return cells(file(), name).get(0).value();
  }

  @ParameterizedTest
  @CsvSource({"0.1", "26.73", "1964", "-0.5", "0.0000001", "123456789012345", "31.1034768"})
  void numbersKeepTheirDecimals(String number) throws Exception {
    HSSFSheet sheet = table(workbook, "S", row(Double.parseDouble(number)));

    assertThat(((CellValue.Number) only(sheet)).value()).isEqualByComparingTo(number);
  }

  @Test
  void aSumThatIsOffInBinaryIsWhatTheOfficeShows() throws Exception {
    HSSFSheet sheet = table(workbook, "S", row(0.1 + 0.2));

    assertThat(((CellValue.Number) only(sheet)).value()).isEqualByComparingTo("0.3");
  }

  @ParameterizedTest
  @CsvSource({"yyyy,true", "yy,true", "'[$-409]yyyy;@',true", "d.m.yyyy,false", "yyyy-mm,false"})
  void aYearAloneIsKnownByItsFormat(String format, boolean yearOnly) throws Exception {
    HSSFSheet sheet = table(workbook, "S", row(7000));
    style(sheet, format);

    assertThat(only(sheet))
        .isEqualTo(new CellValue.Date(LocalDateTime.of(1919, 3, 1, 0, 0), yearOnly));
  }

  @Test
  void daysAreCountedFrom1904WhereTheWorkbookSaysSo() throws Exception {
    HSSFSheet sheet = table(workbook, "S", row(0));
    style(sheet, "yyyy-mm-dd");
    for (Record record : workbook.getInternalWorkbook().getRecords()) {
      if (record instanceof DateWindow1904Record window) {
        window.setWindowing((short) 1);
      }
    }

    assertThat(only(sheet))
        .isEqualTo(new CellValue.Date(LocalDateTime.of(1904, 1, 1, 0, 0), false));
  }

  private void style(HSSFSheet sheet, String format) {
    HSSFCellStyle style = workbook.createCellStyle();
    style.setDataFormat(workbook.createDataFormat().getFormat(format));
    sheet.getRow(0).getCell(0).setCellStyle(style);
  }

  @Test
  void readsEveryKindOfCell() throws Exception {
    HSSFSheet sheet = table(workbook, "My coins", row("1876-S", 2, "", null, "=B1*2"));
    HSSFRow first = sheet.getRow(0);
    first.createCell(5).setCellValue(true);
    first.createCell(6).setCellErrorValue((byte) 42);
    first.createCell(7);
    first.getCell(4).setCellValue(4);

    assertThat(cells(file(), "My coins"))
        .containsExactly(
            cell(0, new CellValue.Text("1876-S"), null),
            cell(1, new CellValue.Number(new BigDecimal("2")), null),
            cell(4, new CellValue.Number(new BigDecimal("4")), "B1*2"),
            cell(5, new CellValue.Bool(true), null),
            cell(6, new CellValue.Error("#N/A"), null));
  }

  private static Cell cell(int column, CellValue value, String formula) {
    return new Cell(new CellPlace("My coins", 0, column), value, Optional.ofNullable(formula));
  }

  @Test
  void readsOnlyTheColumnsAndRowsWanted() throws Exception {
    table(workbook, "S", row("a", "b"), row("c", "d"), row("e", "f"));
    List<String> places = new ArrayList<>();
    try (XlsWorkbook coins = open(file())) {
      coins.read(
          "S",
          column -> column == 1,
          1,
          cells -> cells.forEach(cell -> places.add(cell.place().toString())));
    }

    assertThat(places).containsExactly("S!B1", "S!B2");
  }

  @Test
  void tellsSheetsAreasAndNames() throws Exception {
    HSSFSheet coins = table(workbook, "Coins", row("a", "b"), row("c"));
    coins.createRow(4).createCell(3);
    coins.addMergedRegion(new CellRangeAddress(0, 0, 0, 1));
    table(workbook, "Empty").protectSheet("secret");
    table(workbook, "Deep");
    workbook.setSheetVisibility(1, SheetVisibility.HIDDEN);
    workbook.setSheetVisibility(2, SheetVisibility.VERY_HIDDEN);
    var name = workbook.createName();
    name.setNameName("Spot");
    name.setRefersToFormula("Coins!$A$1");

    try (XlsWorkbook read = open(file())) {
      assertThat(read.sheets())
          .containsExactly(
              new SheetSummary("Coins", Visibility.VISIBLE, false, true),
              new SheetSummary("Empty", Visibility.HIDDEN, true, true),
              new SheetSummary("Deep", Visibility.VERY_HIDDEN, false, true));
      assertThat(read.usedArea("Coins")).isEqualTo(new UsedArea(4, 3));
      assertThat(read.usedArea("Empty")).isEqualTo(new UsedArea(-1, -1));
      assertThat(read.layout("Coins").merged()).containsExactly(new Area(0, 0, 0, 1));
      assertThat(read.names()).containsExactly(new NamedCell("Spot", "Coins!$A$1", false));
    }
  }

  @Test
  void refusesAnEncryptedWorkbookWithAHint() {
    Path encrypted = CorpusFiles.folder("workbooks").resolve("xor-encryption-abc.xls");

    WorkbookRefusal refusal = catchThrowableOfType(WorkbookRefusal.class, () -> open(encrypted));

    assertThat(refusal.kind()).isEqualTo(Kind.PROTECTED);
    assertThat(refusal).hasMessageContaining("xor-encryption-abc.xls").hasMessageContaining("copy");
  }

  @Test
  void refusesAVersionBeforeExcel97() throws Exception {
    byte[] content = new byte[5000];
    LittleEndian.putUShort(content, 0, BOFRecord.sid);
    LittleEndian.putUShort(content, 2, 16);
    LittleEndian.putUShort(content, 4, 0x0500);
    Path old = container("Workbook", content);

    assertThat(catchThrowableOfType(WorkbookRefusal.class, () -> open(old)))
        .hasMessageContaining("before Excel 97")
        .extracting(WorkbookRefusal::kind)
        .isEqualTo(Kind.UNSUPPORTED);
    Path book = container("Book", content);
    assertThat(catchThrowableOfType(WorkbookRefusal.class, () -> open(book)).kind())
        .isEqualTo(Kind.UNSUPPORTED);
  }

  private Path container(String stream, byte[] content) throws Exception {
    Path file = folder.resolve(stream + ".xls");
    try (POIFSFileSystem container = new POIFSFileSystem();
        var out = Files.newOutputStream(file)) {
      container.createDocument(new ByteArrayInputStream(content), stream);
      container.writeFilesystem(out);
    }
    return file;
  }
}
