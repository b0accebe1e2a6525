import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Types a list of a text file into a workbook, as its owner would: first all but the sales, and
 * these when the workbook is there already.
 */
final class ListToWorkbook {
  private static final int FIRST_OF_SALES = 5;

  private ListToWorkbook() {}

  public static void main(String[] args) throws Exception {
    Path file = Path.of(args[1]);
    boolean sales = Files.exists(file);
    try (XSSFWorkbook workbook =
            sales
                ? new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(file)))
                : new XSSFWorkbook();
        CsvReader<CsvRecord> lines = CsvReader.builder().ofCsvRecord(Path.of(args[0]))) {
      Sheet sheet = sales ? workbook.getSheet("Coins") : workbook.createSheet("Coins");
      int number = 0;
      for (CsvRecord line : lines) {
        Row row = sales ? sheet.getRow(number) : sheet.createRow(number);
        for (int column = 0; column < line.getFieldCount(); column++) {
          boolean now = sales == column >= FIRST_OF_SALES || number == 0 && !sales;
          if (now) {
            type(row, column, line.getField(column));
          }
        }
        number++;
      }
      sheet.setColumnWidth(1, 44 * 256);
      try (var out = Files.newOutputStream(file)) {
        workbook.write(out);
      }
    }
  }

  private static void type(Row row, int column, String text) {
    if (text.matches("\\d+(\\.\\d+)?")) {
      row.createCell(column).setCellValue(Double.parseDouble(text));
    } else if (!text.isEmpty()) {
      row.createCell(column).setCellValue(text);
    }
  }
}
