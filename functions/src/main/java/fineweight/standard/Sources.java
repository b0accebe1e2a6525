package fineweight.standard;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The texts behind the catalogue's figures, by the keys that its rows use. Loaded on first use. */
public final class Sources {
  private static final List<String> FILES = List.of("sources-americas.csv", "sources-eurasia.csv");

  private Sources() {}

  /** Read on first use, once. */
  private static final class Loaded {
    static final Map<String, String> CITATIONS = load();
  }

  private static Map<String, String> load() {
    Map<String, String> citations = new HashMap<>();
    for (String file : FILES) {
      InputStream bytes = Sources.class.getResourceAsStream(file);
      if (bytes == null) {
        throw new IllegalStateException(
            "the list of sources " + file + " is missing from the program");
      }
      try (CsvReader<NamedCsvRecord> rows =
          CsvReader.builder()
              .ofNamedCsvRecord(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
        rows.forEach(
            row -> citations.put(row.getField("key").strip(), row.getField("citation").strip()));
      } catch (IOException failed) {
        throw new UncheckedIOException("cannot read the list of sources " + file, failed);
      }
    }
    return Map.copyOf(citations);
  }

  /** The citation of a source; empty if the key is not in the lists. */
  public static Optional<String> citation(String key) {
    return Optional.ofNullable(Loaded.CITATIONS.get(key));
  }
}
