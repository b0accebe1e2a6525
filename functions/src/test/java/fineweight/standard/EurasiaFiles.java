package fineweight.standard;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The files of the catalogue for Europe and Asia, read apart from the rest. */
final class EurasiaFiles {
  private EurasiaFiles() {}

  static List<String> names() {
    try (BufferedReader list = open("files-eurasia.txt")) {
      return list.lines().map(String::strip).filter(name -> !name.isEmpty()).toList();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  static Standards standards() {
    List<CoinStandard> all = new ArrayList<>();
    for (String name : names()) {
      try (BufferedReader text = open(name)) {
        all.addAll(StandardFile.read(name, text));
      } catch (IOException failed) {
        throw new UncheckedIOException(failed);
      }
    }
    return Standards.of(all);
  }

  static List<NamedCsvRecord> rows(String resource) {
    try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(open(resource))) {
      return rows.stream().toList();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private static BufferedReader open(String resource) {
    InputStream bytes = EurasiaFiles.class.getResourceAsStream(resource);
    if (bytes == null) {
      throw new IllegalStateException(resource + " is missing");
    }
    return new BufferedReader(new InputStreamReader(bytes, StandardCharsets.UTF_8));
  }
}
