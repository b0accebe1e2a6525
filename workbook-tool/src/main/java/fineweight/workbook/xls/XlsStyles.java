package fineweight.workbook.xls;

import fineweight.workbook.CellLook;
import fineweight.workbook.SheetDraft.Kind;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.poi.hssf.model.InternalWorkbook;
import org.apache.poi.hssf.record.ExtendedFormatRecord;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFFont;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.hssf.util.HSSFColor.HSSFColorPredefined;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;

/**
 * Cell styles, made once each: the format allows about four thousand in a workbook. The styles that
 * are there are never changed.
 */
final class XlsStyles {
  private static final String GENERAL = "General";

  /** What POI allows. */
  private static final int MOST_FORMATS = 4030;

  private final HSSFWorkbook workbook;
  private final Map<Derived, HSSFCellStyle> derived = new HashMap<>();
  private final Map<Drafted, HSSFCellStyle> drafted = new HashMap<>();
  private final Map<Kind, HSSFFont> fonts = new HashMap<>();

  XlsStyles(HSSFWorkbook workbook) {
    this.workbook = workbook;
  }

  private record Derived(short base, CellLook look) {}

  private record Drafted(Kind kind, CellLook look) {}

  /** A neighbour's style with our number format. */
  HSSFCellStyle derived(HSSFCellStyle neighbour, CellLook look) {
    return derived.computeIfAbsent(
        new Derived(neighbour.getIndex(), look), key -> findOrDerive(neighbour, look));
  }

  private HSSFCellStyle findOrDerive(HSSFCellStyle neighbour, CellLook look) {
    InternalWorkbook internal = workbook.getInternalWorkbook();
    ExtendedFormatRecord wanted = internal.getExFormatAt(neighbour.getIndex()).copy();
    short format = format(look);
    if (wanted.getFormatIndex() == format && wanted.getWrapText() == look.wrapped()) {
      return neighbour;
    }
    wanted.setFormatIndex(format);
    wanted.setWrapText(look.wrapped());
    for (int i = 0; i < internal.getNumExFormats(); i++) {
      if (internal.getExFormatAt(i).equals(wanted)) {
        return workbook.getCellStyleAt(i);
      }
    }
    if (internal.getNumExFormats() >= MOST_FORMATS) {
      // Better the neighbour's number format than no column.
      return neighbour;
    }
    HSSFCellStyle style = workbook.createCellStyle();
    style.cloneStyleFrom(neighbour);
    style.setDataFormat(format);
    style.setWrapText(look.wrapped());
    return style;
  }

  private short format(CellLook look) {
    return workbook
        .createDataFormat()
        .getFormat(look.numberFormat().isEmpty() ? GENERAL : look.numberFormat());
  }

  /** The style of a cell in a sheet of ours. */
  HSSFCellStyle drafted(Kind kind, CellLook look) {
    return drafted.computeIfAbsent(new Drafted(kind, look), key -> draft(kind, look));
  }

  private HSSFCellStyle draft(Kind kind, CellLook look) {
    HSSFCellStyle plain = derived(workbook.getCellStyleAt(0), look);
    if (kind == Kind.PLAIN || workbook.getNumCellStyles() >= MOST_FORMATS) {
      return plain;
    }
    HSSFCellStyle style = workbook.createCellStyle();
    style.cloneStyleFrom(plain);
    switch (kind) {
      case TITLE -> style.setFont(font(kind, font -> font.setBold(true), 14));
      case HEADER -> {
        style.setFont(font(kind, font -> font.setBold(true), 0));
        style.setBorderBottom(BorderStyle.THIN);
      }
      case TOTAL -> {
        style.setFont(font(kind, font -> font.setBold(true), 0));
        style.setBorderTop(BorderStyle.THIN);
      }
      case INPUT -> {
        style.setFillForegroundColor(HSSFColorPredefined.LIGHT_YELLOW.getIndex());
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        style.setLocked(false);
      }
      case REMARK -> style.setFont(font(kind, font -> font.setItalic(true), 0));
      case PLAIN -> throw new IllegalStateException("plain has its style already");
    }
    return style;
  }

  private HSSFFont font(Kind kind, Consumer<HSSFFont> change, int points) {
    return fonts.computeIfAbsent(
        kind,
        key -> {
          HSSFFont usual = workbook.getFontAt(0);
          HSSFFont font = workbook.createFont();
          font.setFontName(usual.getFontName());
          font.setFontHeightInPoints(points == 0 ? usual.getFontHeightInPoints() : (short) points);
          change.accept(font);
          return font;
        });
  }
}
