package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.tool.judge.OwnParts;
import fineweight.workbook.oracle.Oracle;
import fineweight.workbook.validity.WorkbookValidator;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.ss.util.CellReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Cells of the owner that call our functions, in workbooks that LibreOffice 7.4.7 with the add-in
 * has saved: refreshing brings their stored results up to date. Every price is invented.
 */
class CalledFunctionsTest {
  /** NIST Handbook 44, Appendix C. */
  private static final BigDecimal OUNCE = new BigDecimal("31.1034768");

  @TempDir Path folder;

  private Path copy(String name) throws IOException {
    Path file = folder.resolve(name);
    try (InputStream in = getClass().getResourceAsStream("/calls/" + name)) {
      Files.copy(in, file);
    }
    return file;
  }

  /** The same package with the text of one sheet changed. */
  private static void edit(Path file, int sheet, Function<String, String> change)
      throws IOException {
    Map<String, byte[]> parts = new TreeMap<>();
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry each : zip.stream().toList()) {
        parts.put(each.getName(), zip.getInputStream(each).readAllBytes());
      }
    }
    String name = "xl/worksheets/sheet" + sheet + ".xml";
    String before = new String(parts.get(name), StandardCharsets.UTF_8);
    String after = change.apply(before);
    assertThat(after).isNotEqualTo(before);
    parts.put(name, after.getBytes(StandardCharsets.UTF_8));
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> each : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(each.getKey()));
        zip.write(each.getValue());
        zip.closeEntry();
      }
    }
  }

  private static CommandRun refresh(Path file, String... more) {
    return CommandRun.refresh(file, more);
  }

  private static String shown(Workbook workbook, String sheet, String place) {
    CellReference at = new CellReference(place);
    Cell cell = workbook.getSheet(sheet).getRow(at.getRow()).getCell(at.getCol());
    return switch (cell.getCachedFormulaResultType()) {
      case NUMERIC ->
          new BigDecimal(cell.getNumericCellValue())
              .setScale(8, RoundingMode.HALF_UP)
              .stripTrailingZeros()
              .toPlainString();
      case STRING -> cell.getStringCellValue();
      case ERROR -> FormulaError.forInt(cell.getErrorCellValue()).getString();
      default -> cell.getCachedFormulaResultType().name();
    };
  }

  private static String shown(Path file, String sheet, String place) throws IOException {
    try (Workbook workbook = WorkbookFactory.create(file.toFile(), null, true)) {
      return shown(workbook, sheet, place);
    }
  }

  /** Grams of fine metal at a price of an ounce, rounded to cents. */
  private static String melt(String grams, String price) {
    return new BigDecimal(grams)
        .multiply(new BigDecimal(price))
        .divide(OUNCE, 2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  private void keepsItsPromise(Path original, Path file) throws IOException {
    CommandRun dry = refresh(file, "--dry-run");
    assertThat(Files.readAllBytes(file)).isEqualTo(Files.readAllBytes(original));
    CommandRun run = refresh(file);
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(Oracle.findings(original, file, OwnParts.of(file).expected(dry.out()))).isEmpty();
    assertThat(WorkbookValidator.findings(file)).isEmpty();
    assertThat(refresh(file).out()).contains("Nothing had to change");
  }

  /**
   * The price that the owner's cell holds was 30 when the office calculated; now it is 33.
   *
   * <p>Half dollars of 12.5 g and quarter, dime in proportion, 900 fine: Coinage Act of 1873,
   * section 15. Nickels of 1943: 5 g, 350 silver.
   */
  @Test
  void whatDependsOnTheOwnersCellsAndOnOursIsBroughtUpToDate() throws IOException {
    Path file = copy("calls.xlsx");
    edit(file, 2, xml -> xml.replace("<v>30</v>", "<v>33</v>"));
    Path original = CommandRun.copy(file, folder.resolve("kept"));
    String dry = refresh(file, "--dry-run").out();
    assertThat(dry).contains("Coins!E2: ", "Mine!B2: ", "(recalculated when opened)");
    keepsItsPromise(original, file);
    assertThat(shown(file, "Coins", "E2")).isEqualTo(melt("22.5", "33"));
    assertThat(shown(file, "Coins", "E3")).isEqualTo(melt("70", "33"));
    assertThat(shown(file, "Mine", "B2")).isEqualTo(melt("11.25", "33"));
    // The silver of two half dollars, out of a column that this very run has filled.
    assertThat(shown(file, "Mine", "B7")).isEqualTo("22.5");
    // By way of a formula without such functions: twice the rounded melt of one.
    assertThat(shown(file, "Mine", "B11"))
        .isEqualTo(
            new BigDecimal(melt("11.25", "33"))
                .multiply(BigDecimal.valueOf(2))
                .stripTrailingZeros()
                .toPlainString());
  }

  @Test
  void plantedWrongResultsAreMended() throws IOException {
    Path file = copy("calls.xlsx");
    edit(
        file,
        2,
        xml ->
            xml.replace("<v>10.85</v></c><c r=\"D2\"", "<v>99</v></c><c r=\"D2\"")
                .replace("<v>valued</v>", "<v>several</v>")
                .replace("<v>0.7734375</v>", "<v>7</v>")
                .replace(
                    "t=\"e\"><f aca=\"false\">FINEWEIGHT.MELT(&quot;blorp&quot;,30)</f><v>#N/A</v>",
                    "t=\"str\"><f aca=\"false\">FINEWEIGHT.MELT(&quot;blorp&quot;,30)</f><v>fine</v>"));
    edit(file, 1, xml -> xml.replace("<v>67.52</v>", ""));
    Path original = CommandRun.copy(file, folder.resolve("kept"));
    assertThat(shown(file, "Mine", "B2")).isEqualTo("99");
    keepsItsPromise(original, file);
    assertThat(shown(file, "Mine", "B2")).isEqualTo(melt("11.25", "30"));
    assertThat(shown(file, "Mine", "B9")).isEqualTo("valued");
    assertThat(shown(file, "Mine", "B10")).isEqualTo("#N/A");
    assertThat(shown(file, "Coins", "E3")).isEqualTo(melt("70", "30"));
    try (ZipFile zip = new ZipFile(file.toFile());
        InputStream in = zip.getInputStream(zip.getEntry("xl/worksheets/sheet2.xml"))) {
      // A dollar of 412.5 grains, 900 fine, is 371.25 grains of 480 to the ounce: Act of 1837.
      assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8))
          .contains("<c r=\"B5\" s=\"0\"><v>0.7734375</v></c>");
    }
  }

  /** Excel keeps a formula that is filled down once for all its cells. */
  @Test
  void aSharedFormulaIsMovedToEachOfItsCells() throws IOException {
    Path file = copy("calls.xlsx");
    edit(
        file,
        1,
        xml ->
            xml.replaceFirst(
                    "<f aca=\"false\">FINEWEIGHT.MELT\\(C2.*?</f><v>[^<]*</v>",
                    "<f t=\"shared\" ref=\"E2:E3\" si=\"0\">FINEWEIGHT.MELT(C2,30,D2,0,1,A2,B2)</f><v>1</v>")
                .replaceFirst(
                    "<f aca=\"false\">FINEWEIGHT.MELT\\(C3.*?</f><v>[^<]*</v>",
                    "<f t=\"shared\" si=\"0\"/><v>2</v>"));
    Path original = CommandRun.copy(file, folder.resolve("kept"));
    keepsItsPromise(original, file);
    assertThat(shown(file, "Coins", "E2")).isEqualTo(melt("22.5", "30"));
    assertThat(shown(file, "Coins", "E3")).isEqualTo(melt("70", "30"));
  }

  @Test
  void whatCannotBeCalculatedStaysAndIsSaid() throws IOException {
    for (String name : new String[] {"calls.xlsx", "calls.xls"}) {
      Path file = copy(name);
      for (CommandRun run : new CommandRun[] {refresh(file, "--dry-run"), refresh(file)}) {
        assertThat(run.code()).isZero();
        assertThat(run.err()).contains("Mine!B8", "its result stays as it was");
        assertThat(run.err().lines().filter(line -> line.contains("stays as it was"))).hasSize(1);
      }
      assertThat(shown(file, "Mine", "B8")).as(name).isEqualTo("10.85");
    }
  }

  @Test
  void theOldFormatToo() throws IOException {
    Path file = copy("calls.xls");
    try (Workbook workbook = WorkbookFactory.create(Files.newInputStream(file))) {
      workbook.getSheet("Mine").getRow(0).getCell(1).setCellValue(33);
      workbook.getSheet("Mine").getRow(8).getCell(1).setCellValue("several");
      workbook.getSheet("Mine").getRow(4).getCell(1).setCellValue(7);
      try (OutputStream out = Files.newOutputStream(file)) {
        workbook.write(out);
      }
    }
    assertThat(refresh(file, "--dry-run").out())
        .contains(
            "Coins!E2: \"21.7\" -> \"" + melt("22.5", "33"), "Mine!B9: \"several\" -> \"valued\"");
    CommandRun run = refresh(file);
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(shown(file, "Coins", "E2")).isEqualTo(melt("22.5", "33"));
    assertThat(shown(file, "Mine", "B2")).isEqualTo(melt("11.25", "33"));
    assertThat(shown(file, "Mine", "B5")).isEqualTo("0.7734375");
    assertThat(shown(file, "Mine", "B7")).isEqualTo("22.5");
    assertThat(shown(file, "Mine", "B9")).isEqualTo("valued");
    assertThat(refresh(file).out()).contains("Nothing had to change");
  }
}
