package fineweight.typeset;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fineweight.standard.Years;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Reads the list of a set: a CSV with the columns key, name, country, denomination, standards,
 * years and, where the set goes by mint, mints. Lists within a cell are parted by semicolons;
 * {@code none} among the mints stands for no mint mark.
 */
public final class TypeSetFile {
  private static final List<String> NEEDED =
      List.of("key", "name", "country", "denomination", "standards", "years");

  private TypeSetFile() {}

  /**
   * Reads a whole list.
   *
   * @param setName the name of the set
   * @param fileName the file's name, for messages
   * @param text the file's text, read to its end and not closed
   * @throws TypeSetFileException at the first row that cannot be used
   */
  public static TypeSet read(String setName, String fileName, Reader text) {
    List<TypeEntry> entries = new ArrayList<>();
    try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(text)) {
      for (NamedCsvRecord row : rows) {
        entries.add(entry(fileName, row));
      }
    } catch (CsvParseException broken) {
      throw new TypeSetFileException(fileName, 0, broken.getMessage());
    } catch (IOException failed) {
      throw new UncheckedIOException("cannot read " + fileName, failed);
    }
    try {
      return new TypeSet(setName, entries);
    } catch (IllegalArgumentException twice) {
      throw new TypeSetFileException(fileName, 0, twice.getMessage());
    }
  }

  private static TypeEntry entry(String fileName, NamedCsvRecord row) {
    long line = row.getStartingLineNumber();
    for (String column : NEEDED) {
      if (row.findField(column).isEmpty()) {
        throw new TypeSetFileException(fileName, line, "the column " + column + " is missing");
      }
    }
    try {
      return new TypeEntry(
          row.getField("key").strip(),
          row.getField("name").strip(),
          new TypeEntry.Origin(
              row.getField("country").strip(),
              row.getField("denomination").strip(),
              list(row.getField("standards"))),
          Years.parse(row.getField("years")),
          list(row.findField("mints").orElse("")).stream()
              .map(mint -> mint.equals("none") ? "" : mint)
              .toList());
    } catch (IllegalArgumentException unusable) {
      throw new TypeSetFileException(fileName, line, unusable.getMessage());
    }
  }

  private static List<String> list(String text) {
    return Arrays.stream(text.split(";", -1))
        .map(String::strip)
        .filter(piece -> !piece.isEmpty())
        .toList();
  }
}
