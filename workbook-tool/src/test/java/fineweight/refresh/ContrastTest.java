package fineweight.refresh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fineweight.refresh.own.OwnListWishes;
import fineweight.template.StarterWorkbook;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Text on its ground has a contrast of at least 4.5 to 1: success criterion 1.4.3 of WCAG 2.2, with
 * its definitions of relative luminance and contrast ratio.
 */
class ContrastTest {
  private static final int WHITE = 0xFFFFFF;

  @TempDir Path folder;

  private static double channel(int eightBits) {
    double share = eightBits / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  private static double luminance(int rgb) {
    return 0.2126 * channel(rgb >> 16 & 0xFF)
        + 0.7152 * channel(rgb >> 8 & 0xFF)
        + 0.0722 * channel(rgb & 0xFF);
  }

  private static double contrast(int one, int other) {
    double lighter = Math.max(luminance(one), luminance(other));
    double darker = Math.min(luminance(one), luminance(other));
    return (lighter + 0.05) / (darker + 0.05);
  }

  /** Black on white is 21 to 1 by the definition; #767676 on white is the well-known 4.54. */
  @Test
  void theFormulaIsThatOfTheGuidelines() {
    assertThat(contrast(0, WHITE)).isCloseTo(21, within(1e-9));
    assertThat(contrast(0x767676, WHITE)).isCloseTo(4.54, within(0.005));
    assertThat(contrast(0x777777, WHITE)).isLessThan(4.5);
  }

  @Test
  void theSheetsOfARefreshCanBeRead() throws Exception {
    InventoryBook book =
        InventoryBook.of(
            folder,
            "Lot|Year|Denomination|Type|Count|Cost|Status",
            "A|1881|dollar|Morgan|1|30|for sale",
            "A|1942|five cents||1||");
    book.wishing(
        new RefreshWishes.Further(
            java.util.Optional.of("us"),
            java.util.Optional.empty(),
            true,
            true,
            OwnListWishes.NONE));
    book.refresh("2026-11-02", "30", "2500");
    try (XSSFWorkbook workbook = book.opened()) {
      assertThat(workbook.getNumberOfSheets()).isGreaterThanOrEqualTo(9);
      check(workbook);
      for (Sheet sheet : workbook) {
        boolean ours = sheet.getSheetName().startsWith("Fineweight");
        boolean list = ours && !sheet.getSheetName().endsWith("spot");
        if (list) {
          assertThat(heading(sheet)).as(sheet.getSheetName()).isTrue();
        }
      }
    }
  }

  /**
   * The last row that stays in sight is in bold, so that a heading is marked by more than colour.
   */
  private static boolean heading(Sheet sheet) {
    int row = sheet.getPaneInformation().getHorizontalSplitPosition() - 1;
    Cell cell = sheet.getRow(row).getCell(0);
    return ((XSSFCellStyle) cell.getCellStyle()).getFont().getBold();
  }

  @Test
  void theStarterCanBeRead() throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    StarterWorkbook.withDemoRows().write(bytes);
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes.toByteArray()))) {
      check(workbook);
    }
  }

  private static void check(XSSFWorkbook workbook) {
    Map<String, Double> poor = new TreeMap<>();
    int pairs = 0;
    for (Sheet sheet : workbook) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          XSSFCellStyle style = (XSSFCellStyle) cell.getCellStyle();
          boolean filled = style.getFillPattern() == FillPatternType.SOLID_FOREGROUND;
          int ground = filled ? rgb(style.getFillForegroundXSSFColor(), WHITE) : WHITE;
          int text = rgb(style.getFont().getXSSFColor(), 0);
          pairs++;
          if (contrast(text, ground) < 4.5) {
            poor.put(sheet.getSheetName() + "!" + cell.getAddress(), contrast(text, ground));
          }
        }
      }
    }
    assertThat(pairs).isGreaterThan(20);
    assertThat(poor).isEmpty();
  }

  private static int rgb(XSSFColor colour, int otherwise) {
    byte[] rgb = colour == null ? null : colour.getRGBWithTint();
    return rgb == null ? otherwise : (rgb[0] & 0xFF) << 16 | (rgb[1] & 0xFF) << 8 | rgb[2] & 0xFF;
  }
}
