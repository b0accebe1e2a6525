package fineweight.workbook.xls;

import static fineweight.workbook.xls.XlsFiles.column;
import static fineweight.workbook.xls.XlsFiles.columns;
import static fineweight.workbook.xls.XlsFiles.poi;
import static fineweight.workbook.xls.XlsFiles.row;
import static fineweight.workbook.xls.XlsFiles.table;
import static fineweight.workbook.xls.XlsFiles.write;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fineweight.workbook.CellContent;
import fineweight.workbook.NamedCell;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookEdit.Removal;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import fineweight.workbook.save.FileReplacement;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.CellRangeAddress;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Writers that do harm on purpose are all caught before their copy takes the file's place. */
class XlsProofTest {
  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void aWorkbookWithABitOfEverything() throws Exception {
    HSSFWorkbook workbook = new HSSFWorkbook();
    HSSFSheet coins =
        table(
            workbook,
            "Coins",
            row("Year", "Coin", "Grams", "Double"),
            row(1964, "half", 12.5, "=C2*2"),
            row(1921, "dollar", 26.73, "=C3*2"));
    coins.addMergedRegion(new CellRangeAddress(5, 6, 0, 1));
    table(workbook, "Mine", row("x"));
    Name name = workbook.createName();
    name.setNameName("Mine");
    name.setRefersToFormula("Mine!$A$1");
    workbook.addPicture(new byte[] {1, 2, 3}, HSSFWorkbook.PICTURE_TYPE_PNG);
    file = write(workbook, folder.resolve("coins.xls"));
  }

  private static WorkbookEdit edit() {
    return new WorkbookEdit(
        columns(
                "Coins",
                2,
                column(4, "Ours", "0.00", row -> new CellContent.Number(new BigDecimal("0.5"))))
            .sheets(),
        List.of(),
        List.of(new NamedCell("Fineweight", "Coins!$E$1", true)),
        Removal.NOTHING);
  }

  /** Harm to the workbook's model. */
  private interface Harm {
    void to(HSSFWorkbook workbook);
  }

  private static Arguments harm(String name, Harm harm) {
    return Arguments.of(name, harm);
  }

  private static HSSFCell cell(HSSFWorkbook workbook, int row, int column) {
    return workbook.getSheet("Coins").getRow(row).getCell(column);
  }

  static Stream<Arguments> harms() {
    return Stream.of(
        harm("rounds a number", book -> cell(book, 2, 2).setCellValue(26.7)),
        harm("swaps two rows", XlsProofTest::swap),
        harm("loses a cell", book -> book.getSheet("Coins").getRow(1).removeCell(cell(book, 1, 1))),
        harm("turns text into a number", book -> cell(book, 1, 1).setCellValue(5)),
        harm("turns a formula into its result", XlsProofTest::loseAFormula),
        harm("changes a formula", book -> cell(book, 1, 3).setCellFormula("C2*3")),
        harm("changes a stored result", book -> cell(book, 1, 3).setCellValue(1)),
        harm("changes a number format", XlsProofTest::reformat),
        harm(
            "adds a cell",
            book -> book.getSheet("Mine").createRow(4).createCell(0).setCellValue(1)),
        harm("writes our cell wrongly", book -> cell(book, 1, 4).setCellValue(0.6)),
        harm("leaves our cell out", book -> cell(book, 2, 4).setBlank()),
        harm("drops a sheet", book -> book.removeSheetAt(1)),
        harm("renames a sheet", book -> book.setSheetName(1, "Theirs")),
        harm("moves a sheet", book -> book.setSheetOrder("Mine", 0)),
        harm("drops a merged area", book -> book.getSheet("Coins").removeMergedRegion(0)),
        harm("drops a name", book -> book.removeName(book.getName("Mine"))),
        harm("shows our name", book -> book.getNameRecord(1).setHidden(false)),
        harm(
            "adds a picture", book -> book.addPicture(new byte[1], HSSFWorkbook.PICTURE_TYPE_PNG)));
  }

  private static void swap(HSSFWorkbook workbook) {
    cell(workbook, 1, 1).setCellValue("dollar");
    cell(workbook, 2, 1).setCellValue("half");
  }

  private static void loseAFormula(HSSFWorkbook workbook) {
    cell(workbook, 1, 3).setBlank();
    cell(workbook, 1, 3).setCellValue(0);
  }

  private static void reformat(HSSFWorkbook workbook) {
    var style = workbook.createCellStyle();
    style.setDataFormat(workbook.createDataFormat().getFormat("0.0"));
    cell(workbook, 1, 2).setCellStyle(style);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("harms")
  void catchesAWriterThat(String name, Harm harm) {
    assertCaught(
        written -> {
          HSSFWorkbook workbook = poi(written);
          harm.to(workbook);
          rewrite(workbook, written);
        });
  }

  private static void rewrite(HSSFWorkbook workbook, Path written) throws Exception {
    byte[] content = workbook.getBytes();
    workbook.close();
    change(
        written,
        container -> {
          try {
            container
                .getRoot()
                .createOrUpdateDocument("Workbook", new ByteArrayInputStream(content));
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        });
  }

  private static void change(Path written, Consumer<POIFSFileSystem> change) throws Exception {
    try (POIFSFileSystem container =
        new POIFSFileSystem(new ByteArrayInputStream(Files.readAllBytes(written)))) {
      change.accept(container);
      try (OutputStream out = Files.newOutputStream(written)) {
        container.writeFilesystem(out);
      }
    }
  }

  @Test
  void catchesAWriterThatAddsAStream() {
    assertCaught(
        written ->
            change(
                written,
                container -> {
                  try {
                    container.createDocument(new ByteArrayInputStream(new byte[] {1}), "Extra");
                  } catch (IOException e) {
                    throw new UncheckedIOException(e);
                  }
                }));
  }

  @Test
  void passesAWriterThatDoesNoHarm() throws Exception {
    assertThat(save(written -> rewrite(poi(written), written))).isNull();
  }

  /** Harm to a file. */
  private interface FileHarm {
    void to(Path written) throws Exception;
  }

  private void assertCaught(FileHarm harm) {
    WorkbookRefusal refusal = save(harm);
    assertThat(refusal).isNotNull();
    assertThat(refusal.kind()).isEqualTo(Kind.UNSUPPORTED);
    assertThat(refusal).hasMessageContaining("coins.xls was left as it was");
  }

  private WorkbookRefusal save(FileHarm harm) {
    FileReplacement harmful =
        (target, asRead, writer, check) -> {
          Path written = folder.resolve("written");
          try {
            try (OutputStream out = Files.newOutputStream(written)) {
              writer.writeTo(out);
            }
            harm.to(written);
            check.check(written);
            return written;
          } catch (WorkbookRefusal refusal) {
            throw refusal;
          } catch (Exception e) {
            throw new IllegalStateException(e);
          }
        };
    return catchThrowableOfType(
        WorkbookRefusal.class,
        () -> {
          try (XlsWorkbook workbook = XlsWorkbook.open(file, harmful)) {
            workbook.save(edit());
          }
        });
  }
}
