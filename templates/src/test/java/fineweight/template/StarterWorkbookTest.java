package fineweight.template;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.column.HeaderFinder;
import fineweight.column.Headings;
import fineweight.column.InputColumn;
import fineweight.column.RowText;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.DataValidationConstraint.ValidationType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

class StarterWorkbookTest {
  private static byte[] bytes(StarterWorkbook starter) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    starter.write(out);
    return out.toByteArray();
  }

  private static XSSFWorkbook open(StarterWorkbook starter) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(bytes(starter)));
  }

  @Test
  void isTheSameWheneverItIsMade() throws Exception {
    byte[] first = bytes(StarterWorkbook.withDemoRows());
    // A zip holds times of two seconds.
    Thread.sleep(2100);
    assertThat(bytes(StarterWorkbook.withDemoRows())).isEqualTo(first);
  }

  @Test
  void tellsNothingOfWhoMadeItAndWhen() throws IOException {
    String user = System.getProperty("user.name");
    try (ZipInputStream zip =
        new ZipInputStream(new ByteArrayInputStream(bytes(StarterWorkbook.withDemoRows())))) {
      for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
        assertThat(part.getTimeLocal()).as(part.getName()).hasToString("1980-01-01T00:00");
        if (part.getName().startsWith("docProps/")) {
          String text = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
          assertThat(text).doesNotContain(">" + user + "<").doesNotContain("Apache");
          assertThat(text.replace("1970-01-01T00:00:00Z", ""))
              .doesNotContain("T00:")
              .doesNotContain("202");
        }
      }
    }
  }

  @Test
  void everyHeadingIsUnderstood() throws IOException {
    try (XSSFWorkbook workbook = open(StarterWorkbook.withDemoRows())) {
      XSSFSheet sheet = workbook.getSheetAt(0);
      Map<Integer, String> texts = new TreeMap<>();
      sheet.getRow(0).forEach(cell -> texts.put(cell.getColumnIndex(), cell.getStringCellValue()));
      Map<Integer, InputColumn> found =
          new HeaderFinder(Headings.standard())
              .find(List.of(new RowText(0, texts)), Set.of())
              .orElseThrow()
              .columns();
      assertThat(found.values())
          .containsExactly(
              InputColumn.KEY,
              InputColumn.COUNTRY,
              InputColumn.YEAR,
              InputColumn.MINT,
              InputColumn.DENOMINATION,
              InputColumn.TYPE,
              InputColumn.COUNT,
              InputColumn.GRADE,
              InputColumn.CERTIFICATE,
              InputColumn.MASS,
              InputColumn.LOT,
              InputColumn.COST,
              InputColumn.CURRENCY,
              InputColumn.OWN_PRICE,
              InputColumn.STATUS,
              InputColumn.NOTES);
    }
  }

  @Test
  void offersDropDownsAndExplainsEveryColumn() throws IOException {
    try (XSSFWorkbook workbook = open(StarterWorkbook.empty())) {
      XSSFSheet sheet = workbook.getSheetAt(0);
      Map<String, String> lists = new TreeMap<>();
      for (XSSFDataValidation entry : sheet.getDataValidations()) {
        int column = entry.getRegions().getCellRangeAddress(0).getFirstColumn();
        String heading = sheet.getRow(0).getCell(column).getStringCellValue();
        assertThat(entry.getPromptBoxText()).as(heading).isNotBlank();
        if (entry.getValidationConstraint().getValidationType() == ValidationType.LIST) {
          assertThat(entry.getErrorBoxText()).as(heading).isNotBlank();
          lists.put(
              heading, String.join(" ", entry.getValidationConstraint().getExplicitListValues()));
        }
      }
      assertThat(sheet.getDataValidations()).hasSize(sheet.getRow(0).getLastCellNum());
      assertThat(lists).containsOnlyKeys("Mint mark", "Grade", "Currency", "Status");
      assertThat(lists.get("Mint mark")).isEqualTo("P D S O CC W");
      assertThat(lists.get("Grade")).startsWith("1 2 3").endsWith("68 69 70");
      assertThat(lists.get("Status")).isEqualTo("unsold sold kept returned traded");
    }
  }

  @Test
  void keepsItsHeadingsInSightAndPrintsOnePageWide() throws IOException {
    try (XSSFWorkbook workbook = open(StarterWorkbook.withDemoRows())) {
      XSSFSheet sheet = workbook.getSheet("Inventory");
      assertThat(sheet.getPaneInformation().isFreezePane()).isTrue();
      assertThat(sheet.getPaneInformation().getHorizontalSplitTopRow()).isEqualTo((short) 1);
      assertThat(sheet.getRepeatingRows().formatAsString()).isEqualTo("1:1");
      assertThat(sheet.getFitToPage()).isTrue();
      assertThat(sheet.getPrintSetup().getFitWidth()).isEqualTo((short) 1);
      assertThat(sheet.getPrintSetup().getFitHeight()).isEqualTo((short) 0);
      assertThat(workbook.getActiveSheetIndex()).isZero();
    }
  }

  @Test
  void saysThatTheDemoRowsAreInvented() throws IOException {
    try (XSSFWorkbook workbook = open(StarterWorkbook.withDemoRows())) {
      assertThat(workbook.getSheet("How to use").getRow(1).getCell(0).getStringCellValue())
          .isEqualTo("Invented");
      XSSFSheet sheet = workbook.getSheet("Inventory");
      Set<Double> numbers = new HashSet<>();
      for (int row = 1; row <= sheet.getLastRowNum(); row++) {
        XSSFRow cells = sheet.getRow(row);
        assertThat(cells.getCell(InventoryColumn.LOT.ordinal()).getStringCellValue())
            .endsWith("(invented)");
        assertThat(numbers.add(cells.getCell(0).getNumericCellValue())).isTrue();
      }
      assertThat(numbers).hasSize(25);
    }
  }

  @Test
  void namesEverySheetThatIsAddedAndTheLabels() throws IOException {
    try (XSSFWorkbook workbook = open(StarterWorkbook.empty())) {
      StringBuilder words = new StringBuilder();
      workbook
          .getSheet("How to use")
          .forEach(row -> row.forEach(cell -> words.append(cell).append('\n')));
      assertThat(words)
          .contains("Fineweight spot", "Fineweight review", "Fineweight totals", "Fineweight lots")
          .contains("Fineweight opening", "Fineweight type set", "Fineweight for sale", "by place")
          .contains("Fineweight history", "payouts", "fineweight labels", "sold 1, for sale 2");
    }
  }

  @Test
  void anEmptyOneHasNoRowsAndSpeaksOfNone() throws IOException {
    try (XSSFWorkbook workbook = open(StarterWorkbook.empty())) {
      assertThat(workbook.getSheet("Inventory").getLastRowNum()).isZero();
      workbook
          .getSheet("How to use")
          .forEach(
              row ->
                  row.forEach(
                      cell -> assertThat(cell.getStringCellValue()).doesNotContain("nvented")));
    }
  }

  /** WCAG 2.2, success criterion 1.4.3: 4.5 to 1. */
  @Test
  void everyTextStandsOutFromItsGround() throws IOException {
    try (XSSFWorkbook workbook = open(StarterWorkbook.withDemoRows())) {
      int pairs = 0;
      for (int sheet = 0; sheet < workbook.getNumberOfSheets(); sheet++) {
        for (var row : workbook.getSheetAt(sheet)) {
          for (var cell : row) {
            assertThat(contrast((XSSFCell) cell))
                .as(cell.getAddress().toString())
                .isGreaterThanOrEqualTo(4.5);
            pairs++;
          }
        }
      }
      assertThat(pairs).isGreaterThan(400);
    }
  }

  private static double contrast(XSSFCell cell) {
    XSSFColor ground = cell.getCellStyle().getFillForegroundColorColor();
    XSSFColor text = cell.getCellStyle().getFont().getXSSFColor();
    double on = ground == null ? 1 : luminance(ground.getRGB());
    double of = text == null || text.getRGB() == null ? 0 : luminance(text.getRGB());
    return (Math.max(on, of) + 0.05) / (Math.min(on, of) + 0.05);
  }

  private static double luminance(byte[] rgb) {
    double[] weights = {0.2126, 0.7152, 0.0722};
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      double share = (rgb[i] & 0xFF) / 255.0;
      sum +=
          weights[i] * (share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4));
    }
    return sum;
  }
}
