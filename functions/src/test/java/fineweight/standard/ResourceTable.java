package fineweight.standard;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A CSV beside the catalogue, read as plain text, so that tests see the figures as typed. */
final class ResourceTable {
  private ResourceTable() {}

  /** The rows by column name; no rows if the file is not there. */
  static List<Map<String, String>> rows(String resource) {
    InputStream bytes = ResourceTable.class.getResourceAsStream(resource);
    if (bytes == null) {
      return List.of();
    }
    List<Map<String, String>> rows = new ArrayList<>();
    try (CsvReader<NamedCsvRecord> records =
        CsvReader.builder()
            .ofNamedCsvRecord(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
      records.forEach(record -> rows.add(new LinkedHashMap<>(record.getFieldsAsMap())));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    return rows;
  }

  /** The rows of several files one after the other. */
  static List<Map<String, String>> rowsOf(String... resources) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (String resource : resources) {
      rows.addAll(rows(resource));
    }
    return rows;
  }

  /** The raw rows of every file that the catalogue's lists name. */
  static List<Map<String, String>> catalogue() {
    List<Map<String, String>> rows = new ArrayList<>();
    for (String list : List.of("files-americas.txt", "files-eurasia.txt")) {
      for (String file : lines(list)) {
        rows.addAll(rows(file));
      }
    }
    return rows;
  }

  static List<String> lines(String resource) {
    try (InputStream bytes = ResourceTable.class.getResourceAsStream(resource)) {
      if (bytes == null) {
        return List.of();
      }
      return new String(bytes.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .map(String::strip)
          .filter(line -> !line.isEmpty())
          .toList();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }
}
