package fineweight.template;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The rows of the invented scenario, from a resource file. */
final class DemoRows {
  private DemoRows() {}

  /** Each row has a text for every column of the resource, perhaps an empty one. */
  static List<List<String>> read(String resource) {
    InputStream bytes = DemoRows.class.getResourceAsStream(resource);
    if (bytes == null) {
      throw new IllegalStateException("the demo rows are missing from the program");
    }
    try (CsvReader<CsvRecord> rows =
        CsvReader.builder().ofCsvRecord(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
      return rows.stream().skip(1).map(CsvRecord::getFields).toList();
    } catch (IOException failed) {
      throw new UncheckedIOException("cannot read the demo rows", failed);
    }
  }
}
