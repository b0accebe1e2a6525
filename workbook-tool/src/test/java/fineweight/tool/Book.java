package fineweight.tool;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A small workbook of invented coins, made with Apache POI. */
final class Book {
  private final Workbook book;

  private Book(Workbook book) {
    this.book = book;
  }

  static Book xlsx() {
    return new Book(new XSSFWorkbook());
  }

  static Book xls() {
    return new Book(new HSSFWorkbook());
  }

  /** Year, denomination, count and price of the rows given, under headings in row 1. */
  static Book ofCoins(Object... cells) {
    Book book = xlsx().sheet("Coins", cells("Year", "Denomination", "Count", "Paid"));
    return cells.length == 0 ? book : book.row("Coins", cells);
  }

  static Object[] cells(Object... cells) {
    return cells;
  }

  Book sheet(String name, Object[]... rows) {
    book.createSheet(name);
    for (Object[] cells : rows) {
      row(name, cells);
    }
    return this;
  }

  /** A row below the last; null is an empty cell, a text that begins with = a formula. */
  Book row(String name, Object... cells) {
    Sheet sheet = book.getSheet(name);
    return rowAt(name, sheet.getPhysicalNumberOfRows() == 0 ? 1 : sheet.getLastRowNum() + 2, cells);
  }

  /**
   * @param number of the row, from 1
   */
  Book rowAt(String name, int number, Object... cells) {
    Row row = book.getSheet(name).createRow(number - 1);
    for (int column = 0; column < cells.length; column++) {
      if (cells[column] != null) {
        set(row.createCell(column), cells[column]);
      }
    }
    return this;
  }

  private static void set(Cell cell, Object content) {
    if (content instanceof Number number) {
      cell.setCellValue(new BigDecimal(number.toString()).doubleValue());
    } else if (content.toString().startsWith("=")) {
      cell.setCellFormula(content.toString().substring(1));
    } else {
      cell.setCellValue(content.toString());
    }
  }

  Book merge(String sheet, String area) {
    book.getSheet(sheet).addMergedRegion(CellRangeAddress.valueOf(area));
    return this;
  }

  /** Saves with all formulas calculated. */
  Path save(Path file) throws IOException {
    book.getCreationHelper().createFormulaEvaluator().evaluateAll();
    try (OutputStream out = Files.newOutputStream(file)) {
      book.write(out);
    }
    book.close();
    return file;
  }
}
