package fineweight.label;

import fineweight.template.FixedWorkbook;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FontFamily;
import org.apache.poi.ss.usermodel.FontScheme;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTPageSetup;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STOrientation;

/**
 * A workbook of one sheet whose cells are labels, to be printed in true size. A label is one cell,
 * so that its words can still be changed by hand; no word is ever a formula.
 */
public final class LabelWorkbook {
  private static final String SHEET = "Labels";
  private static final BigDecimal MILLIMETRES_AN_INCH = new BigDecimal("25.4");
  private static final String FACE = "Arial";

  private final LabelLayout layout;
  private final List<Label> labels;
  private final int skipped;
  private final Lettering lettering;

  /**
   * @param labels in the order of printing: across, then down, then page after page
   * @param skipped how many places of the first page stay empty, because the sheet of labels was
   *     used before; from 0
   */
  public LabelWorkbook(LabelLayout layout, List<Label> labels, int skipped) {
    if (skipped < 0) {
      throw new IllegalArgumentException("the number of labels to skip is not below zero");
    }
    this.layout = layout;
    this.labels = List.copyOf(labels);
    this.skipped = skipped;
    this.lettering = new Lettering(layout.label());
  }

  /** The labels, from 0, whose words may not fit even in the smallest letters. */
  public List<Integer> tooFull() {
    List<Integer> full = new ArrayList<>();
    for (int i = 0; i < labels.size(); i++) {
      if (!lettering.fits(labels.get(i))) {
        full.add(i);
      }
    }
    return full;
  }

  /** How many pages it prints. */
  public int pages() {
    return Math.max(1, (skipped + labels.size() + layout.perPage() - 1) / layout.perPage());
  }

  /**
   * Writes the workbook as .xlsx; the stream stays open.
   *
   * @throws IOException if the stream cannot take it
   */
  public void write(OutputStream out) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      XSSFFont counted = workbook.getFontAt(0);
      counted.setFontName(Grid.COUNTED_FACE);
      counted.setFontHeightInPoints(Grid.COUNTED_POINTS);
      counted.setFamily(FontFamily.MODERN);
      counted.setScheme(FontScheme.NONE);
      XSSFSheet sheet = workbook.createSheet(SHEET);
      Grid across = across();
      Grid down = down();
      widths(sheet, across);
      cells(sheet, across, down);
      page(sheet);
      int lastRow = pages() * down.cells() - 1;
      workbook.setPrintArea(0, 0, across.cells() - 1, 0, lastRow);
      FixedWorkbook.write(workbook, "Coin labels", out);
    }
  }

  private Grid across() {
    return new Grid(
        layout.across(), layout.label().width(), layout.gaps().width(), layout.usable().width());
  }

  private Grid down() {
    return new Grid(
        layout.down(), layout.label().height(), layout.gaps().height(), layout.usable().height());
  }

  private static void widths(XSSFSheet sheet, Grid across) {
    for (int i = 0; i < across.cells(); i++) {
      // POI wants 256ths of a digit's width; the digit is eight dots wide, so they are whole.
      sheet.setColumnWidth(i, across.dots(i) * 256 / Grid.DOTS_A_DIGIT);
    }
  }

  private void cells(XSSFSheet sheet, Grid across, Grid down) {
    Map<Integer, Look> looks = new HashMap<>();
    int common = lettering.common(labels);
    for (int page = 0; page < pages(); page++) {
      for (int i = 0; i < down.cells(); i++) {
        XSSFRow row = sheet.createRow(page * down.cells() + i);
        row.setHeightInPoints(down.points(i));
      }
      if (page + 1 < pages()) {
        sheet.setRowBreak((page + 1) * down.cells() - 1);
      }
    }
    for (int i = 0; i < labels.size(); i++) {
      int place = skipped + i;
      int page = place / layout.perPage();
      int onPage = place % layout.perPage();
      int row = page * down.cells() + down.cellOf(onPage / layout.across());
      int column = across.cellOf(onPage % layout.across());
      Label label = labels.get(i);
      int size = Math.min(common, lettering.largest(label));
      Look look = looks.computeIfAbsent(size, points -> look(sheet.getWorkbook(), points));
      put(sheet.getRow(row).createCell(column), label, look);
    }
  }

  private record Look(XSSFCellStyle style, XSSFFont bold) {}

  private Look look(XSSFWorkbook workbook, int halfPoints) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFont(font(workbook, halfPoints, false));
    style.setWrapText(true);
    style.setAlignment(HorizontalAlignment.CENTER);
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    // A word that begins like a formula stays a word when its owner edits the cell.
    style.setQuotePrefixed(true);
    if (layout.frames()) {
      style.setBorderTop(BorderStyle.HAIR);
      style.setBorderRight(BorderStyle.HAIR);
      style.setBorderBottom(BorderStyle.HAIR);
      style.setBorderLeft(BorderStyle.HAIR);
    }
    return new Look(style, font(workbook, halfPoints, true));
  }

  private static XSSFFont font(XSSFWorkbook workbook, int halfPoints, boolean bold) {
    XSSFFont font = workbook.createFont();
    font.setFontName(FACE);
    font.setFamily(FontFamily.SWISS);
    font.setFontHeight((short) (halfPoints * 10));
    font.setBold(bold);
    return font;
  }

  private static void put(XSSFCell cell, Label label, Look look) {
    XSSFRichTextString words = new XSSFRichTextString(String.join("\n", label.lines()));
    if (!label.lines().isEmpty()) {
      words.applyFont(0, label.lines().get(0).length(), look.bold());
    }
    cell.setCellValue(words);
    cell.setCellStyle(look.style());
  }

  private void page(XSSFSheet sheet) {
    Margins margins = layout.margins();
    sheet.setMargin(PageMargin.TOP, inches(margins.top()));
    sheet.setMargin(PageMargin.RIGHT, inches(margins.right()));
    sheet.setMargin(PageMargin.BOTTOM, inches(margins.bottom()));
    sheet.setMargin(PageMargin.LEFT, inches(margins.left()));
    sheet.setMargin(PageMargin.HEADER, 0);
    sheet.setMargin(PageMargin.FOOTER, 0);
    CTPageSetup setup = sheet.getCTWorksheet().addNewPageSetup();
    Paper paper = layout.paper();
    paper.code().ifPresent(setup::setPaperSize);
    if (paper.code().isEmpty()) {
      setup.setPaperWidth(Extent.plain(paper.size().width()) + "mm");
      setup.setPaperHeight(Extent.plain(paper.size().height()) + "mm");
    }
    setup.setScale(100);
    setup.setOrientation(paper.landscape() ? STOrientation.LANDSCAPE : STOrientation.PORTRAIT);
  }

  private static double inches(BigDecimal millimetres) {
    return millimetres.doubleValue() / MILLIMETRES_AN_INCH.doubleValue();
  }
}
