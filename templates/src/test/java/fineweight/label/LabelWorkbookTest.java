package fineweight.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** Read again by POI; the size on paper is looked at in the test of the command. */
class LabelWorkbookTest {
  /** Half a dot of 1/96 inch, by which offices round. */
  private static final double HALF_A_DOT = 25.4 / 96 / 2 + 0.001;

  private static LabelLayout layout(
      String paper, String label, String margins, String gaps, boolean frames) {
    return new LabelLayout(
        Paper.read(paper).orElseThrow(),
        Extent.read(label).orElseThrow(),
        Margins.read(margins).orElseThrow(),
        Extent.read(gaps).orElseThrow(),
        frames);
  }

  private static List<Label> labels(int number) {
    return IntStream.range(0, number)
        .mapToObj(i -> new Label(List.of("dollar, Morgan", "piece " + i)))
        .toList();
  }

  private static byte[] bytes(LabelWorkbook labels) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    labels.write(out);
    return out.toByteArray();
  }

  private static XSSFWorkbook open(LabelWorkbook labels) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(bytes(labels)));
  }

  /** A digit of ten-point Courier New is 8 dots of 1/96 inch wide (0.6 of 10 points). */
  private static double millimetres(XSSFSheet sheet, int column) {
    return sheet.getColumnWidth(column) / 256.0 * 8 / 96 * 25.4;
  }

  @Test
  void everyEdgeLiesWhereItWasMeasured() throws IOException {
    LabelLayout layout = layout("A4", "38.1x21.2", "10.7,4.7,10.7,4.7", "2.5x0.7", false);
    try (XSSFWorkbook workbook = open(new LabelWorkbook(layout, labels(70), 0))) {
      XSSFSheet sheet = workbook.getSheet("Labels");
      assertThat(workbook.getFontAt(0).getFontName()).isEqualTo("Courier New");
      double at = 0;
      for (int i = 0; i < layout.across(); i++) {
        assertThat(at).isCloseTo(i * 40.6, within(HALF_A_DOT));
        at += millimetres(sheet, 2 * i);
        assertThat(at).isCloseTo(i * 40.6 + 38.1, within(HALF_A_DOT));
        at += i + 1 < layout.across() ? millimetres(sheet, 2 * i + 1) : 0;
      }
      double down = 0;
      for (int i = 0; i < layout.down(); i++) {
        assertThat(down).isCloseTo(i * 21.9, within(HALF_A_DOT));
        down += sheet.getRow(2 * i).getHeightInPoints() / 72 * 25.4;
        assertThat(down).isCloseTo(i * 21.9 + 21.2, within(HALF_A_DOT));
        down += i + 1 < layout.down() ? sheet.getRow(2 * i + 1).getHeightInPoints() / 72 * 25.4 : 0;
      }
      assertThat(sheet.getMargin(PageMargin.TOP) * 25.4).isCloseTo(10.7, within(0.001));
      assertThat(sheet.getMargin(PageMargin.LEFT) * 25.4).isCloseTo(4.7, within(0.001));
      assertThat(sheet.getMargin(PageMargin.HEADER)).isZero();
      assertThat(sheet.getPrintSetup().getScale()).isEqualTo((short) 100);
      assertThat(sheet.getFitToPage()).isFalse();
    }
  }

  @Test
  void neverGoesBeyondTheMarginsByRounding() throws IOException {
    LabelLayout layout = layout("A4", "70x37", "0", "0x0", false);
    try (XSSFWorkbook workbook = open(new LabelWorkbook(layout, labels(24), 0))) {
      XSSFSheet sheet = workbook.getSheet("Labels");
      double width = IntStream.range(0, 3).mapToDouble(i -> millimetres(sheet, i)).sum();
      assertThat(width).isLessThanOrEqualTo(210).isGreaterThan(209.7);
      double height =
          IntStream.range(0, 8).mapToDouble(i -> sheet.getRow(i).getHeightInPoints()).sum();
      assertThat(height).isLessThanOrEqualTo(297 / 25.4 * 72);
      assertThat(sheet.getPrintSetup().getPaperSize()).isEqualTo((short) 9);
    }
  }

  @Test
  void fillsPlacesAcrossThenDownThenOnTheNextPageAndSkipsTheUsedOnes() throws IOException {
    LabelLayout layout = layout("A5", "50x50", "10", "5x5", false);
    LabelWorkbook labels = new LabelWorkbook(layout, labels(5), 3);
    assertThat(labels.pages()).isEqualTo(2);
    try (XSSFWorkbook workbook = open(labels)) {
      XSSFSheet sheet = workbook.getSheet("Labels");
      // Two across and three down, gaps between: rows 0, 2, 4 on the first page, 5 on the second.
      assertThat(sheet.getRow(0).getPhysicalNumberOfCells()).isZero();
      assertThat(text(sheet, 2, 2)).endsWith("piece 0");
      assertThat(text(sheet, 4, 0)).endsWith("piece 1");
      assertThat(text(sheet, 4, 2)).endsWith("piece 2");
      assertThat(text(sheet, 5, 0)).endsWith("piece 3");
      assertThat(text(sheet, 5, 2)).endsWith("piece 4");
      assertThat(sheet.getRowBreaks()).containsExactly(4);
      assertThat(workbook.getPrintArea(0)).isEqualTo("Labels!$A$1:$C$10");
    }
  }

  private static String text(XSSFSheet sheet, int row, int column) {
    return sheet.getRow(row).getCell(column).getStringCellValue();
  }

  @Test
  void noWordIsEverAFormula() throws IOException {
    Label odd = new Label(List.of("=1+1", "+2", "@x", "-3"));
    try (XSSFWorkbook workbook =
        open(new LabelWorkbook(layout("A4", "38x21", "10", "0x0", true), List.of(odd), 0))) {
      XSSFCell cell = workbook.getSheet("Labels").getRow(0).getCell(0);
      assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
      assertThat(cell.getStringCellValue()).isEqualTo("=1+1\n+2\n@x\n-3");
      assertThat(cell.getCellStyle().getQuotePrefixed()).isTrue();
      assertThat(cell.getCellStyle().getWrapText()).isTrue();
      assertThat(cell.getCellStyle().getBorderLeft()).isEqualTo(BorderStyle.HAIR);
      assertThat(cell.getRichStringCellValue().getFontAtIndex(0).getBold()).isTrue();
    }
  }

  @Test
  void smallLabelsHaveSmallLettersAndTooFullOnesAreTold() throws IOException {
    Label little = new Label(List.of("dime"));
    Label much = new Label(Collections.nCopies(12, "a long line about one small coin"));
    LabelWorkbook labels =
        new LabelWorkbook(
            layout("A4", "38x21", "10", "0x0", false), List.of(little, much, little), 0);
    assertThat(labels.tooFull()).containsExactly(1);
    try (XSSFWorkbook workbook = open(labels)) {
      XSSFSheet sheet = workbook.getSheet("Labels");
      int size = sheet.getRow(0).getCell(0).getCellStyle().getFont().getFontHeightInPoints();
      int small = sheet.getRow(0).getCell(1).getCellStyle().getFont().getFontHeightInPoints();
      assertThat(small).isLessThan(size);
    }
  }

  @Test
  void aPaperOfOnesOwnIsNamedByItsSize() throws IOException {
    try (XSSFWorkbook workbook =
        open(new LabelWorkbook(layout("62x29", "60x27", "1", "0x0", false), labels(2), 0))) {
      var setup = workbook.getSheet("Labels").getCTWorksheet().getPageSetup();
      assertThat(setup.getPaperWidth()).isEqualTo("62mm");
      assertThat(setup.getPaperHeight()).isEqualTo("29mm");
    }
  }

  @Test
  void isTheSameWheneverItIsMade() throws IOException, InterruptedException {
    LabelWorkbook labels =
        new LabelWorkbook(layout("A4", "38x21", "10", "0x0", false), labels(3), 0);
    byte[] first = bytes(labels);
    // A zip holds times of two seconds.
    Thread.sleep(2100);
    assertThat(bytes(labels)).isEqualTo(first);
  }
}
