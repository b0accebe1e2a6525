package fineweight.assay;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads the tables that come with the program. */
final class AssayRows {
  private AssayRows() {}

  static List<NamedCsvRecord> of(String file) {
    InputStream bytes = AssayRows.class.getResourceAsStream("/fineweight/assay/" + file);
    if (bytes == null) {
      throw new IllegalStateException("the table " + file + " is missing from the program");
    }
    try (CsvReader<NamedCsvRecord> rows =
        CsvReader.builder()
            .ofNamedCsvRecord(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
      return rows.stream().toList();
    } catch (IOException failed) {
      throw new UncheckedIOException("cannot read the table " + file, failed);
    }
  }
}
