package fineweight.refresh;

import fineweight.metal.Metal;
import fineweight.quantity.MassUnit;
import fineweight.refresh.column.MoneyCells;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.open.AnyWorkbook;
import fineweight.workbook.save.SafeSave;
import fineweight.workbook.xlsx.XlsxWorkbook;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.joda.money.CurrencyUnit;

/** An invented inventory in a file of its own, refreshed, and read again by another library. */
final class InventoryBook {
  private final Path file;
  private RefreshWishes.Further further = RefreshWishes.Further.NOTHING;

  private InventoryBook(Path file) {
    this.file = file;
  }

  /** A workbook with the sheet "Coins"; the cells of a line are parted by bars. */
  static InventoryBook of(Path folder, String... lines) throws IOException {
    InventoryBook book = new InventoryBook(folder.resolve("coins.xlsx"));
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      book.fill(workbook, "Coins", lines);
      return book;
    }
  }

  /** This workbook with a further sheet of its owner's. */
  InventoryBook with(String sheet, String... lines) throws IOException {
    try (XSSFWorkbook workbook = opened()) {
      fill(workbook, sheet, lines);
    }
    return this;
  }

  InventoryBook wishing(RefreshWishes.Further wishes) {
    further = wishes;
    return this;
  }

  XSSFWorkbook opened() throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(bytes()));
  }

  private void fill(XSSFWorkbook workbook, String name, String... lines) throws IOException {
    Sheet sheet = workbook.createSheet(name);
    for (int i = 0; i < lines.length; i++) {
      Row row = sheet.createRow(i);
      String[] cells = lines[i].split("\\|", -1);
      for (int column = 0; column < cells.length; column++) {
        put(row, column, cells[column].strip());
      }
    }
    write(workbook);
  }

  private static void put(Row row, int column, String text) {
    if (text.matches("\\d+(\\.\\d+)?")) {
      row.createCell(column).setCellValue(Double.parseDouble(text));
    } else if (!text.isEmpty()) {
      row.createCell(column).setCellValue(text);
    }
  }

  private void write(XSSFWorkbook workbook) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      workbook.write(out);
    }
  }

  /** Types into a cell of a sheet, as its owner would. */
  void type(String sheet, String heading, int row, String text) throws IOException {
    try (XSSFWorkbook workbook = opened()) {
      Sheet found = workbook.getSheet(sheet);
      int column = column(found, heading);
      Row line = found.getRow(row - 1) == null ? found.createRow(row - 1) : found.getRow(row - 1);
      put(line, column, text);
      write(workbook);
    }
  }

  Path file() {
    return file;
  }

  byte[] bytes() throws IOException {
    return Files.readAllBytes(file);
  }

  RefreshReport refresh(String date, String silver, String gold)
      throws IOException, WorkbookRefusal, RefreshRefusal {
    try (Workbook workbook = open()) {
      return Refresh.run(workbook, wishes(date, silver, gold));
    }
  }

  void takeOut() throws IOException, WorkbookRefusal {
    try (Workbook workbook = open()) {
      Refresh.takeOut(workbook);
    }
  }

  private Workbook open() throws WorkbookRefusal {
    SafeSave save = SafeSave.onDisk();
    return AnyWorkbook.of(path -> XlsxWorkbook.open(path, save), save).open(file);
  }

  private RefreshWishes wishes(String date, String silver, String gold) {
    CurrencyUnit dollar = CurrencyUnit.USD;
    SpotPrices prices =
        SpotPrices.of(
            dollar,
            LocalDate.parse(date),
            List.of(
                new SpotPrice(Metal.SILVER, new BigDecimal(silver), dollar, MassUnit.TROY_OUNCE),
                new SpotPrice(Metal.GOLD, new BigDecimal(gold), dollar, MassUnit.TROY_OUNCE)));
    return new RefreshWishes(
        prices,
        true,
        Optional.empty(),
        Optional.empty(),
        MoneyCells.LIVE_FORMULAS,
        false,
        false,
        fineweight.standard.Standards.catalogue(),
        "US",
        2026,
        Map.of(),
        further);
  }

  /** The cells of a sheet line by line, joined by bars, blank lines left out. */
  List<String> lines(String sheet) throws IOException {
    List<String> lines = new ArrayList<>();
    try (XSSFWorkbook workbook = opened()) {
      for (Row row : workbook.getSheet(sheet)) {
        List<String> cells = new ArrayList<>();
        for (int column = 0; column < row.getLastCellNum(); column++) {
          cells.add(text(row.getCell(column)));
        }
        if (!String.join("", cells).isEmpty()) {
          lines.add(String.join("|", cells));
        }
      }
    }
    return lines;
  }

  boolean has(String sheet) throws IOException {
    try (XSSFWorkbook workbook = opened()) {
      return workbook.getSheet(sheet) != null;
    }
  }

  /** The cells below a heading, from the row after it to the last. */
  List<String> column(String sheet, String heading) throws IOException {
    List<String> cells = new ArrayList<>();
    try (XSSFWorkbook workbook = opened()) {
      Sheet found = workbook.getSheet(sheet);
      int column = column(found, heading);
      boolean below = false;
      for (Row row : found) {
        String text = text(row.getCell(column));
        if (below) {
          cells.add(text);
        }
        below |= text.equals(heading);
      }
    }
    return cells;
  }

  boolean hasColumn(String heading) throws IOException {
    return lines("Coins").get(0).contains("|" + heading + "|");
  }

  private static int column(Sheet sheet, String heading) {
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (text(cell).equals(heading)) {
          return cell.getColumnIndex();
        }
      }
    }
    throw new AssertionError("no heading \"" + heading + "\" in " + sheet.getSheetName());
  }

  private static String text(Cell cell) {
    if (cell == null) {
      return "";
    }
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    return switch (type) {
      case NUMERIC -> plain(cell.getNumericCellValue());
      case STRING -> cell.getStringCellValue();
      case BOOLEAN -> Boolean.toString(cell.getBooleanCellValue()).toLowerCase(Locale.ROOT);
      default -> "";
    };
  }

  private static String plain(double number) {
    BigDecimal decimal = new BigDecimal(Double.toString(number)).stripTrailingZeros();
    return decimal.toPlainString();
  }
}
