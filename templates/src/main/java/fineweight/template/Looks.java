package fineweight.template;

import java.util.EnumMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.FontFamily;
import org.apache.poi.ss.usermodel.FontScheme;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The looks of cells. Every pair of text and ground has a contrast of at least 4.5 to 1, and no
 * look means anything by its colour alone.
 */
final class Looks {
  /** Dark slate blue; white on it has a contrast of 10 to 1. */
  private static final byte[] SLATE = {(byte) 0xFF, 0x2B, 0x43, 0x5C};

  private static final byte[] WHITE = {(byte) 0xFF, (byte) 0xFF, (byte) 0xFF, (byte) 0xFF};

  private final XSSFWorkbook workbook;
  private final Map<InventoryColumn, XSSFCellStyle> cells = new EnumMap<>(InventoryColumn.class);
  private final XSSFFont body;
  private final XSSFCellStyle header;
  private final XSSFCellStyle textHeader;
  private final XSSFCellStyle amountHeader;
  private final XSSFCellStyle title;
  private final XSSFCellStyle heading;
  private final XSSFCellStyle text;
  private final XSSFCellStyle term;

  Looks(XSSFWorkbook workbook) {
    this.workbook = workbook;
    // Its scheme points to a theme that the workbook does not have.
    body = workbook.getFontAt(0);
    body.setScheme(FontScheme.NONE);
    header = header(HorizontalAlignment.LEFT, 0);
    textHeader = header(HorizontalAlignment.LEFT, 1);
    amountHeader = header(HorizontalAlignment.RIGHT, 0);
    title = plain(font(16, true, SLATE));
    heading = plain(font(12, true, SLATE));
    text = plain(font(11, false, null));
    text.setWrapText(true);
    term = plain(font(11, true, null));
    term.setWrapText(true);
    for (InventoryColumn column : InventoryColumn.values()) {
      cells.put(column, cell(column));
    }
  }

  private XSSFFont font(int points, boolean bold, byte[] colour) {
    XSSFFont font = workbook.createFont();
    font.setFontHeightInPoints((short) points);
    font.setBold(bold);
    font.setFamily(FontFamily.SWISS);
    if (colour != null) {
      font.setColor(new XSSFColor(colour));
    }
    return font;
  }

  private XSSFCellStyle header(HorizontalAlignment alignment, int indent) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFont(font(11, true, WHITE));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    style.setFillForegroundColor(new XSSFColor(SLATE));
    style.setWrapText(true);
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    style.setAlignment(alignment);
    style.setIndention((short) indent);
    return style;
  }

  private XSSFCellStyle plain(XSSFFont font) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFont(font);
    style.setVerticalAlignment(VerticalAlignment.TOP);
    return style;
  }

  private XSSFCellStyle cell(InventoryColumn column) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFont(body);
    style.setWrapText(column.isLong());
    switch (column) {
      case NUMBER, MINT, GRADE -> style.setAlignment(HorizontalAlignment.CENTER);
      // A year may be a number or words such as 1964-66; both stand at the same edge.
      case YEAR -> style.setAlignment(HorizontalAlignment.LEFT);
      case TYPE, LOT, CURRENCY, STATUS, CERTIFICATE -> {
        // A text beside a right-aligned number keeps its distance.
        style.setAlignment(HorizontalAlignment.LEFT);
        style.setIndention((short) 1);
      }
      default -> style.setAlignment(HorizontalAlignment.GENERAL);
    }
    column
        .format()
        .ifPresent(format -> style.setDataFormat(workbook.createDataFormat().getFormat(format)));
    return style;
  }

  /** A heading of the inventory. */
  XSSFCellStyle ofHeader(InventoryColumn column) {
    return switch (column) {
      case COUNT, WEIGHT, COST, OWN_PRICE -> amountHeader;
      case TYPE, LOT, CURRENCY, STATUS, CERTIFICATE -> textHeader;
      default -> header;
    };
  }

  XSSFCellStyle of(InventoryColumn column) {
    return cells.get(column);
  }

  XSSFCellStyle ofTitle() {
    return title;
  }

  XSSFCellStyle ofHeading() {
    return heading;
  }

  /** A paragraph. */
  XSSFCellStyle ofText() {
    return text;
  }

  /** A word that is explained beside it. */
  XSSFCellStyle ofTerm() {
    return term;
  }
}
