package fineweight.workbook.open;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fineweight.workbook.FileFormat;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import fineweight.workbook.save.SafeSave;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class AnyWorkbookTest {
  @TempDir Path folder;

  /** Stands for the reader of packages, which has its own tests. */
  private static Workbook packageOf(Path file) throws WorkbookRefusal {
    throw new WorkbookRefusal(Kind.FILE, "taken for a package: " + file.getFileName());
  }

  private final AnyWorkbook workbooks =
      AnyWorkbook.of(AnyWorkbookTest::packageOf, SafeSave.onDisk());

  private WorkbookRefusal refused(Path file) {
    WorkbookRefusal refusal =
        catchThrowableOfType(WorkbookRefusal.class, () -> workbooks.open(file).close());
    assertThat(refusal).as("no refusal of " + file).isNotNull();
    assertThat(refusal.getMessage())
        .startsWith(file.getFileName().toString())
        .endsWith(".")
        .doesNotContain("Exception", "null", "\n")
        .matches("(?s).*: .*");
    return refusal;
  }

  private boolean isTakenForPackage(Path file) {
    return catchThrowableOfType(WorkbookRefusal.class, () -> workbooks.open(file).close())
        .getMessage()
        .startsWith("taken for a package");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "shared_formulas.xls",
        "SimpleWithImages.xls",
        "WithConditionalFormatting.xls",
        "LO7322.csv",
        "japanese.csv",
        "psql.csv",
        "testCSV85.csv",
        "ErrorTypes.txt"
      })
  void opensWhatItKnows(String name) throws Exception {
    try (Workbook workbook = workbooks.open(CorpusFiles.folder("workbooks").resolve(name))) {
      assertThat(workbook.format())
          .isEqualTo(name.endsWith(".xls") ? FileFormat.XLS : FileFormat.CSV);
      for (SheetSummary sheet : workbook.sheets()) {
        workbook.read(sheet.name(), column -> true, Integer.MAX_VALUE, cells -> {});
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "workbooks,encryptAES.xlsx,PROTECTED,encrypted",
    "workbooks,xor-encryption-abc.xls,PROTECTED,encrypted",
    "workbooks,special_cells.ods,UNSUPPORTED,.ods",
    "hostile,html-table.xls,UNSUPPORTED,web page",
    "hostile,xls-renamed.xlsx,UNSUPPORTED,Excel 97-2003",
    "hostile,unterminated-quote.csv,DAMAGED,line 2",
    "hostile,zero-bytes.xlsx,DAMAGED,empty",
    "hostile,truncated-zip.xlsx,DAMAGED,cut off",
    "hostile,prepended-junk.xlsx,DAMAGED,neither",
    "hostile,clusterfuzz-testcase-minimized-POIHSSFFuzzer-4651309315719168.xls,PROTECTED,encrypted",
    "hostile,clusterfuzz-testcase-minimized-POIHSSFFuzzer-5786329142919168.xls,DAMAGED,damaged"
  })
  void refusesInOneSentence(String where, String name, Kind kind, String words) {
    WorkbookRefusal refusal = refused(CorpusFiles.folder(where).resolve(name));

    assertThat(refusal.kind()).isEqualTo(kind);
    assertThat(refusal).hasMessageContaining(words);
  }

  static Stream<Path> packages() throws IOException {
    return Stream.of("workbooks", "inventories").flatMap(AnyWorkbookTest::packagesIn);
  }

  private static Stream<Path> packagesIn(String folder) {
    try {
      return CorpusFiles.all(folder, ".xlsx").stream()
          .filter(file -> !file.endsWith("encryptAES.xlsx"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @MethodSource
  void packages(Path file) {
    assertThat(isTakenForPackage(file)).isTrue();
  }

  /** Which of the two says no does not matter, as long as one does. */
  @Test
  void handsNoHarmfulFileToTheReadersOfTextAndOldWorkbooks() throws Exception {
    for (Path file : CorpusFiles.all("hostile", ".xlsx")) {
      assertThat(catchThrowableOfType(WorkbookRefusal.class, () -> workbooks.open(file).close()))
          .as(file.toString())
          .isNotNull();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "25504446 2d312e37,DAMAGED,PDF",
    "89504e47 0d0a1a0a,DAMAGED,picture",
    "ffd8ffe0 00104a46,DAMAGED,picture",
    "47494638 39610100,DAMAGED,picture",
    "1f8b0800 00000000,UNSUPPORTED,archive",
    "377abcaf 271c0004,UNSUPPORTED,archive",
    "09000400 02001000,UNSUPPORTED,Excel 97",
    "09040600 00001000,UNSUPPORTED,Excel 97",
    "d0cf11e0 a1b11ae1,DAMAGED,cut off",
    "504b0304 14000000,DAMAGED,cut off",
    "61620063 64656600,DAMAGED,neither",
    "7b5c7274 66310000,UNSUPPORTED,not a workbook"
  })
  void tellsOtherFilesByTheirFirstBytes(String bytes, Kind kind, String words) throws Exception {
    Path file =
        Files.write(folder.resolve("coins.xls"), HexFormat.of().parseHex(bytes.replace(" ", "")));

    assertThat(refused(file).kind()).isEqualTo(kind);
    assertThat(refused(file)).hasMessageContaining(words);
  }

  @ParameterizedTest
  @CsvSource({
    "'<html><table>',web page",
    "'\n <!DOCTYPE HTML PUBLIC>',web page",
    "'<TABLE><tr>',web page",
    "'MIME-Version: 1.0',web page",
    "'<?xml version=\"1.0\"?><?mso-application progid=\"Excel.Sheet\"?>',XML",
    "'\uFEFF<?xml version=\"1.0\"?>',XML"
  })
  void tellsMarkupThatIsNamedLikeAWorkbook(String text, String words) throws Exception {
    Path file = Files.writeString(folder.resolve("coins.xls"), text);

    assertThat(refused(file).kind()).isEqualTo(Kind.UNSUPPORTED);
    assertThat(refused(file)).hasMessageContaining(words);
    Files.write(file, ("\uFEFF" + text.replace("\uFEFF", "")).getBytes(StandardCharsets.UTF_16LE));
    assertThat(refused(file)).hasMessageContaining(words);
  }

  @ParameterizedTest
  @CsvSource({
    "[Content_Types].xml,x/vnd.ms-excel.sheet.binary.macroEnabled.main,UNSUPPORTED,.xlsb",
    "[Content_Types].xml,x/wordprocessingml.document.main+xml,UNSUPPORTED,not a workbook",
    "mimetype,application/vnd.oasis.opendocument.text,UNSUPPORTED,not a workbook",
    "coins.csv,'a,b',UNSUPPORTED,archive"
  })
  void tellsOtherPackages(String entry, String content, Kind kind, String words) throws Exception {
    Path file = folder.resolve("coins.xlsx");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      zip.putNextEntry(new ZipEntry(entry));
      zip.write(content.getBytes(StandardCharsets.UTF_8));
    }

    assertThat(refused(file).kind()).isEqualTo(kind);
    assertThat(refused(file)).hasMessageContaining(words);
  }

  @Test
  void textNamedLikeAnOldWorkbookIsText() throws Exception {
    Path file = Files.writeString(folder.resolve("export.xls"), "Year\tCoin\n1964\thalf\n");

    try (Workbook workbook = workbooks.open(file)) {
      assertThat(workbook.format()).isEqualTo(FileFormat.CSV);
    }
  }

  @Test
  void textNamedLikeAPackageIsRefused() throws Exception {
    Path file = Files.writeString(folder.resolve("coins.xlsx"), "Year,Coin\n1964,half\n");

    assertThat(refused(file).kind()).isEqualTo(Kind.UNSUPPORTED);
  }

  @Test
  void saysThatAFolderOrAnAbsentFileIsNone() {
    assertThat(refused(folder).kind()).isEqualTo(Kind.FILE);
    assertThat(refused(folder.resolve("absent.xlsx")).kind()).isEqualTo(Kind.FILE);
  }
}
