import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A list in a text file as a workbook, as its owner would have typed it. */
final class ListToWorkbook {
  public static void main(String[] args) throws Exception {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        CsvReader<CsvRecord> lines = CsvReader.builder().ofCsvRecord(Path.of(args[0]))) {
      Sheet sheet = workbook.createSheet("Coins");
      for (CsvRecord line : lines) {
        Row row = sheet.createRow(sheet.getPhysicalNumberOfRows());
        for (int column = 0; column < line.getFieldCount(); column++) {
          String text = line.getField(column);
          if (text.matches("\\d+(\\.\\d+)?")) {
            row.createCell(column).setCellValue(Double.parseDouble(text));
          } else if (!text.isEmpty()) {
            row.createCell(column).setCellValue(text);
          }
        }
      }
      sheet.setColumnWidth(1, 44 * 256);
      try (var out = Files.newOutputStream(Path.of(args[1]))) {
        workbook.write(out);
      }
    }
  }
}
