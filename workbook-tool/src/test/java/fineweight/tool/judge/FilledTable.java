package fineweight.tool.judge;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.ss.util.NumberToTextConverter;

/** A table of a filled file by heading and row, read with other means than the program's. */
public final class FilledTable {
  private final Map<Integer, FilledRow> rows = new TreeMap<>();

  private List<String> headings = List.of();

  private FilledTable() {}

  /**
   * @param headerRow from 1
   */
  public static FilledTable ofWorkbook(Path file, String sheet, int headerRow) throws IOException {
    ZipSecureFile.setMinInflateRatio(0);
    try (Workbook book = WorkbookFactory.create(file.toFile(), null, true)) {
      Sheet found = sheet.isEmpty() ? book.getSheetAt(0) : book.getSheet(sheet);
      List<List<String>> lines = new ArrayList<>();
      for (int row = 0; row <= found.getLastRowNum(); row++) {
        lines.add(texts(found.getRow(row)));
      }
      return of(lines, headerRow);
    }
  }

  public static FilledTable ofText(Path file, char separator, Charset charset, int headerRow)
      throws IOException {
    List<List<String>> lines = new ArrayList<>();
    try (CsvReader<CsvRecord> records =
        CsvReader.builder()
            .fieldSeparator(separator)
            .skipEmptyLines(false)
            .allowMissingFields(true)
            .allowExtraFields(true)
            .ofCsvRecord(file, charset)) {
      records.forEach(
          each -> lines.add(each.getFields().stream().map(FilledTable::point).toList()));
    }
    return of(lines, headerRow);
  }

  /** Our numbers stand with a decimal comma in a file that writes numbers so. */
  private static String point(String field) {
    return field.matches("-?\\d+,\\d+") ? field.replace(',', '.') : field;
  }

  private static FilledTable of(List<List<String>> lines, int headerRow) {
    FilledTable table = new FilledTable();
    List<String> headings = List.copyOf(lines.get(headerRow - 1));
    table.headings = headings;
    for (int row = headerRow; row < lines.size(); row++) {
      Map<String, String> cells = new LinkedHashMap<>();
      List<String> line = lines.get(row);
      for (int column = 0; column < Math.min(line.size(), headings.size()); column++) {
        if (!line.get(column).isEmpty()) {
          // Where an owner's heading is like ours, ours stands further right and says so.
          cells.put(headings.get(column).replace(" (Fineweight)", ""), line.get(column));
        }
      }
      table.rows.put(row + 1, new FilledRow(cells));
    }
    return table;
  }

  private static List<String> texts(Row row) {
    List<String> texts = new ArrayList<>();
    for (int column = 0; row != null && column < row.getLastCellNum(); column++) {
      texts.add(text(row.getCell(column)));
    }
    return texts;
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
      case NUMERIC ->
          new BigDecimal(NumberToTextConverter.toText(cell.getNumericCellValue())).toPlainString();
      case STRING -> cell.getStringCellValue();
      case BOOLEAN -> Boolean.toString(cell.getBooleanCellValue());
      case ERROR -> "#" + cell.getErrorCellValue();
      default -> "";
    };
  }

  /** A row from 1; one without cells if there is none. */
  public FilledRow row(int row) {
    return rows.getOrDefault(row, new FilledRow(Map.of()));
  }

  /** All texts of the row of headings, from the left. */
  public List<String> headings() {
    return headings;
  }

  public Map<Integer, FilledRow> rows() {
    return rows;
  }
}
