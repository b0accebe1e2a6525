package fineweight.workbook.corpus;

import fineweight.workbook.CellPlace;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** What Apache POI reads in a workbook: a second reader that knows nothing of ours. */
final class OwnerCells {
  private OwnerCells() {}

  /**
   * All cells with content, as words.
   *
   * @param left cells that do not matter
   * @return empty if POI cannot read the file
   */
  static Optional<Map<CellPlace, String>> read(Path file, Predicate<CellPlace> left)
      throws IOException {
    Map<CellPlace, String> cells = new HashMap<>();
    OPCPackage opened = null;
    // Limits on the ratio would keep an honest file of the corpus out.
    ZipSecureFile.setMinInflateRatio(0);
    try {
      opened = OPCPackage.open(file.toFile(), PackageAccess.READ);
      XSSFWorkbook book = new XSSFWorkbook(opened);
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            CellPlace place =
                new CellPlace(sheet.getSheetName(), cell.getRowIndex(), cell.getColumnIndex());
            if (!left.test(place) && cell.getCellType() != CellType.BLANK) {
              cells.put(place, words((XSSFCell) cell));
            }
          }
        }
      }
      return Optional.of(cells);
    } catch (InvalidFormatException | RuntimeException e) {
      return Optional.empty();
    } finally {
      if (opened != null) {
        opened.revert();
      }
    }
  }

  /** Formula and style, and the stored result where it is not a formula. */
  private static String words(XSSFCell cell) {
    // Without a styles part there is no format, which means the general one.
    String known = cell.getCellStyle() == null ? null : cell.getCellStyle().getDataFormatString();
    String look = known == null ? "General" : known;
    return cell.getCellType() == CellType.FORMULA
        ? "=" + cell.getCellFormula() + " " + look
        : cell.getCellType() + " " + cell.getRawValue() + " " + text(cell) + " " + look;
  }

  private static String text(XSSFCell cell) {
    return cell.getCellType() == CellType.STRING ? cell.getRichStringCellValue().getString() : "";
  }

  /** The value of one cell: a BigDecimal, a String, or null for a blank. */
  static Object value(XSSFWorkbook book, CellPlace place) {
    Sheet sheet = book.getSheet(place.sheet());
    Row row = sheet == null ? null : sheet.getRow(place.row());
    XSSFCell cell = row == null ? null : (XSSFCell) row.getCell(place.column());
    if (cell == null) {
      return null;
    }
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    return switch (type) {
      case NUMERIC -> new BigDecimal(cell.getRawValue());
      case STRING -> cell.getRichStringCellValue().getString();
      default -> null;
    };
  }
}
